package wireworthy.window.evening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.VBox;
import wireworthy.evening.course.Evening;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.PickList;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** The evenings to start from, and what of them can't be read. */
final class StartFrom extends VBox {
    StartFrom(final MakeModel model) {
        final List<Optional<Evening>> all = new ArrayList<>();
        all.add(Optional.empty());
        model.evenings().evenings().forEach(each -> all.add(Optional.of(each)));
        final PickList list =
                new PickList(
                        EveningTexts.of("make.start"),
                        all.stream().map(StartFrom::name).toList(),
                        number -> use(model, all.get(number)),
                        () -> {});
        model.comesFrom()
                .evening()
                .subscribe(evening -> list.button(all.indexOf(evening)).setSelected(true));
        getStyleClass().add(Styles.ONE_OF);
        getChildren().setAll(Texts.strong(EveningTexts.of("make.start")), list);
        model.evenings()
                .troubles()
                .forEach(each -> getChildren().add(new Notice(Verdict.CAUTION, each)));
    }

    private static void use(final MakeModel model, final Optional<Evening> evening) {
        if (!model.comesFrom().evening().get().equals(evening)) {
            model.use(evening);
        }
    }

    private static String name(final Optional<Evening> evening) {
        return evening.map(Evening::title).orElseGet(() -> EveningTexts.of("make.own"));
    }
}
