package wireworthy.window.figures;

import javafx.scene.Node;
import wireworthy.lessons.Figure;
import wireworthy.working.Solver;

/** Builds the live figures of lessons. */
public final class LiveFigures {
    private LiveFigures() {}

    /**
     * A figure as its lesson sets it.
     *
     * @param solver works everything the figure shows, and keeps the plans
     */
    public static Node of(final Figure figure, final Solver solver) {
        return card(figure, solver);
    }

    /** What a figure says in words as its lesson sets it. */
    public static String words(final Figure figure, final Solver solver) {
        return card(figure, solver).words();
    }

    private static FigureCard card(final Figure figure, final Solver solver) {
        return switch (figure.kind()) {
            case POWER_CURRENT_VOLTAGE -> {
                final PowerCurrentVoltage model = new PowerCurrentVoltage(figure, solver);
                yield card(model, new PowerCurrentVoltageDrawing(model.now()), figure);
            }
            case CONVERTER_CURRENT -> {
                final ConverterCurrent model = new ConverterCurrent(figure, solver);
                yield card(model, new ConverterCurrentDrawing(model.now()), figure);
            }
            case LAMPS_ON_A_FEED -> {
                final LampsOnAFeed model = new LampsOnAFeed(figure, solver);
                yield card(model, new LampsOnAFeedDrawing(model), figure);
            }
            case FUSE_BETWEEN -> {
                final FuseBetween model = new FuseBetween(figure, solver);
                yield card(model, new FuseBetweenDrawing(model.now()), figure);
            }
            case WHERE_THE_CABLE_THINS -> {
                final WhereTheCableThins model = new WhereTheCableThins(figure, solver);
                yield card(model, new WhereTheCableThinsDrawing(model.now()), figure);
            }
            case FOUR_WAYS -> {
                final FourWays model = new FourWays(figure, solver);
                yield card(model, new FourWaysDrawing(model.now()), figure);
            }
            case DERATED_AMPACITY -> {
                final DeratedAmpacity model = new DeratedAmpacity(figure, solver);
                yield card(model, new DeratedAmpacityDrawing(model.now()), figure);
            }
            case SECTION_TO_SCALE -> {
                final SectionToScale model = new SectionToScale(figure, solver);
                yield card(model, new SectionToScaleDrawing(model.now()), figure);
            }
            case VOLTS_ALONG_THE_RUN -> {
                final VoltsAlongTheRun model = new VoltsAlongTheRun(figure, solver);
                yield card(model, new VoltsAlongTheRunDrawing(model.now()), figure);
            }
            case BANK_BUILDER -> {
                final BankBuilder model = new BankBuilder(figure, solver);
                yield card(model, new BankBuilderDrawing(model), figure);
            }
            case FUSE_OR_CABLE -> {
                final FuseOrCable model = new FuseOrCable(figure, solver);
                yield card(model, new FuseOrCableDrawing(model), figure);
            }
            case DAYS_ENERGY -> {
                final DaysEnergy model = new DaysEnergy(figure, solver);
                yield card(model, new DaysEnergyDrawing(model), figure);
            }
        };
    }

    private static FigureCard card(
            final FigureModel<?> model, final Drawing drawing, final Figure figure) {
        return new FigureCard(model, drawing, figure.tryThis());
    }
}
