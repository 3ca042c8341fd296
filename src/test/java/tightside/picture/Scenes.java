package tightside.picture;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import tightside.drive.Drive;
import tightside.timing.Drives;
import tightside.timing.Seat;
import tightside.timing.Solution;
import tightside.timing.Solver;
import tightside.timing.State;
import tightside.timing.State.Arrived;

/** Drives in states, for pictures. */
final class Scenes {

  private Scenes() {}

  static Stream<Named<Solution>> all() {
    return scenes().entrySet().stream().map(e -> Named.of(e.getKey(), e.getValue()));
  }

  private static Map<String, Solution> scenes() {
    Map<String, Solution> scenes = new LinkedHashMap<>();
    Drive answered = Drives.answered();
    State right = State.reference();
    scenes.put("as it should be", solve(answered, right));
    scenes.put("exhaust a tooth ahead", solve(answered, reseated("exhaust", 1)));
    scenes.put("intake two teeth behind", solve(answered, reseated("intake", -2)));
    scenes.put("crank a tooth ahead", solve(answered, reseated("crank", 1)));
    scenes.put("stretched", solve(answered, right.stretched("main", 0.5)));
    scenes.put("out of travel", solve(answered, right.stretched("main", 2)));
    scenes.put("held back", solve(answered, right.held("main", 0)));
    scenes.put("turned on", solve(answered, right.turnedTo(40, Arrived.FORWARD)));
    scenes.put("turned far on", solve(answered, right.turnedTo(4711.5, Arrived.FORWARD)));
    scenes.put("all at once", solve(answered, everything()));
    scenes.put("the other way round", solve(PictureDrives.counterclockwise(), right));
    scenes.put("idler outside", solve(PictureDrives.outsideIdler(), right));
    scenes.put("three chains", solve(PictureDrives.threeChains(), right));
    scenes.put(
        "three chains, worn and wrong",
        solve(
            PictureDrives.threeChains(),
            right
                .stretched("primary", 0.3)
                .reseated(new Seat("left bank", "left intake"), 1)
                .turnedTo(-123, Arrived.FORWARD)));
    scenes.put("odd", solve(PictureDrives.odd(), right));
    scenes.put("toothed", solve(PictureDrives.toothed(), right));
    return scenes;
  }

  static State reseated(String shaft, int teeth) {
    return State.reference().reseated(new Seat("main", shaft), teeth);
  }

  private static State everything() {
    return reseated("exhaust", 1)
        .reseated(new Seat("main", "crank"), -1)
        .stretched("main", 0.4)
        .turnedTo(200, Arrived.FORWARD);
  }

  static Solution solve(Drive drive, State state) {
    return Solver.solve(drive, state);
  }

  static Picture picture(Solution solution) {
    return DrivePicture.of(solution, PictureOptions.full());
  }

  static Picture answered(State state) {
    return picture(solve(Drives.answered(), state));
  }

  static <T extends Shape> List<T> shapes(Picture picture, Class<T> type, Ink... inks) {
    List<Ink> wanted = List.of(inks);
    return picture.shapes().stream()
        .filter(type::isInstance)
        .map(type::cast)
        .filter(shape -> wanted.isEmpty() || wanted.contains(shape.tag().ink()))
        .toList();
  }
}
