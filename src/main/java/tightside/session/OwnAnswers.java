package tightside.session;

import java.util.ArrayList;
import java.util.List;
import tightside.drive.Chain;
import tightside.drive.Drive;
import tightside.drive.Sprocket;
import tightside.timing.Seat;
import tightside.timing.ShaftTiming;
import tightside.timing.Solver;
import tightside.timing.State;
import tightside.words.Sentences;

/** The first answers of a drive that was just entered. */
public final class OwnAnswers {

  private OwnAnswers() {}

  /** What one tooth does at every marked sprocket, and when paint meets the marks again. */
  public static List<String> of(Drive drive) {
    Solver solver = Solver.of(drive);
    List<String> answers = new ArrayList<>();
    for (Chain chain : drive.chains()) {
      for (Sprocket sprocket : chain.sprockets()) {
        if (sprocket.marked() && sprocket != chain.driver()) {
          answers.add(tooth(solver, chain, sprocket.shaft()));
        }
      }
      answers.add(
          Sentences.realign(solver.solve(State.reference()).chain(chain.name()).orElseThrow()));
    }
    return answers;
  }

  private static String tooth(Solver solver, Chain chain, String shaft) {
    State ahead = State.reference().reseated(new Seat(chain.name(), shaft), 1);
    ShaftTiming timing = solver.solve(ahead).shaft(shaft).orElseThrow();
    return "One tooth ahead: " + Sentences.timing(solver.drive(), timing) + ".";
  }
}
