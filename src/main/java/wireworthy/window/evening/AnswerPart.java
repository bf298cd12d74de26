package wireworthy.window.evening;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;

/** Where a problem of a sheet is answered. */
interface AnswerPart {
    /** The fields, under the question. */
    Node answering();

    /** What is done with what was typed. */
    List<Button> buttons();

    /** What there is to say, beside the question. */
    Node beside();

    /** A text for each answer asked for, as it stands. */
    List<String> typed();

    /** Puts the keyboard where the answer goes. */
    void focus();
}
