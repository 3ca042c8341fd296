package tightside.window;

import java.util.function.BooleanSupplier;
import java.util.function.Function;
import javafx.scene.control.TextField;
import tightside.session.Edit;

/**
 * Fields of a form: each letter typed is an edit, and Enter leads on to the next number.
 *
 * @param desk on which the edits are done
 * @param showing whether a change is the card's own, and no event
 * @param entered what Enter does in a field
 */
record OwnTyping(
    Desk desk, BooleanSupplier showing, java.util.function.Consumer<TextField> entered) {

  TextField field(String spoken, int columns, Function<String, Edit> edit) {
    TextField field =
        Controls.field(
            spoken,
            columns,
            text -> {
              if (!showing.getAsBoolean()) {
                desk.act(now -> edit.apply(text));
              }
            });
    field.setOnAction(e -> entered.accept(field));
    return field;
  }

  static void show(TextField field, String text) {
    if (!field.getText().equals(text)) {
      field.setText(text);
    }
  }
}
