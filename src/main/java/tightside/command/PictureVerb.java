package tightside.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import tightside.files.Model;
import tightside.files.WholeFiles;
import tightside.picture.DrivePicture;
import tightside.picture.Picture;
import tightside.picture.PictureOptions;
import tightside.picture.Svg;
import tightside.timing.Solution;
import tightside.timing.Solver;
import tightside.timing.State;

@Command(
    name = "picture",
    description = "Draws the drive: every link, tooth, face and mark, as an SVG file.")
final class PictureVerb extends ModelVerb {

  /** Pixels; an SVG scales, so this is how large a browser shows it at first. */
  private static final int WIDTH = 900;

  @Option(
      names = {"-o", "--output"},
      required = true,
      paramLabel = "OUT.svg",
      description = "The file to write; replaced whole, or not at all.")
  private Path output;

  @Option(
      names = "--turn",
      paramLabel = "DEGREES",
      description = "Crank degrees turned forward from the reference position.")
  private double turn;

  @Option(names = "--reseat", paramLabel = "SHAFT=K", description = "A sprocket some teeth over.")
  private List<String> reseats = List.of();

  @Option(names = "--stretch", paramLabel = "[CHAIN=]PERCENT", description = "Wear of the chain.")
  private List<String> stretch = List.of();

  @Option(
      names = "--valves",
      description = {
        "Draws the room between valves and pistons instead, and a cylinder cut open: where",
        "the crank is turned to, or else where a valve comes nearest to its piston."
      })
  private boolean valves;

  @Override
  Answer answer(Model model) {
    if (!output.toString().endsWith(".svg")) {
      throw new Refusal(
          "a picture is written as SVG; give -o a name that ends in .svg, not " + output);
    }
    State turned = State.reference().turnedTo(turn, State.Arrived.FORWARD);
    State reseated = Words.reseated(model.drive(), turned, reseats);
    State state = Words.stretched(model.drive(), reseated, stretch);
    Solution solution = Solver.solve(model.drive(), state);
    byte[] svg = Svg.write(picture(model, solution), WIDTH).getBytes(StandardCharsets.UTF_8);
    try {
      WholeFiles.replace(output, svg);
    } catch (IOException e) {
      throw new Refusal(e.getMessage());
    }
    return new Answer(
        Verdict.of(solution),
        () -> Json.object("model", model.drive().name(), "picture", output.toString()),
        () -> List.of("Wrote the picture to " + output + "."));
  }

  private Picture picture(Model model, Solution solution) {
    return valves
        ? EngineAsDrawn.picture(model, solution)
        : DrivePicture.of(solution, PictureOptions.full().withCaution(notProved(model)));
  }
}
