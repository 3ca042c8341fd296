package tightside.window;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.FileChooser;
import javafx.stage.Stage;
import tightside.files.RecordFile;

/** Asks for the file of a job, above a window. */
record JobChooser(Stage stage) implements JobSetting.Chooser {

  @Override
  public Optional<Path> open() {
    return Optional.ofNullable(chooser("Open a job").showOpenDialog(stage)).map(File::toPath);
  }

  @Override
  public Optional<Path> save(String name) {
    FileChooser chooser = chooser("Keep this job as");
    chooser.setInitialFileName(name);
    return Optional.ofNullable(chooser.showSaveDialog(stage)).map(File::toPath);
  }

  @Override
  public Optional<Path> print(String name) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle("Print to a file");
    chooser
        .getExtensionFilters()
        .addAll(
            new FileChooser.ExtensionFilter("PDF", "*.pdf"),
            new FileChooser.ExtensionFilter("HTML", "*.html"));
    chooser.setInitialFileName(name);
    return Optional.ofNullable(chooser.showSaveDialog(stage)).map(File::toPath);
  }

  private static FileChooser chooser(String title) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(title);
    chooser
        .getExtensionFilters()
        .add(new FileChooser.ExtensionFilter("Jobs", "*" + RecordFile.ENDING));
    return chooser;
  }
}
