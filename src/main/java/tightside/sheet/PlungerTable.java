package tightside.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tightside.drive.Tensioner;
import tightside.readings.PlungerStands;
import tightside.timing.SlackByExtension;
import tightside.timing.Solver;
import tightside.timing.State;
import tightside.timing.StretchLimit;
import tightside.timing.TensionerReading;
import tightside.words.Numbers;

/** What the place of a plunger says, as bands: a reading is never one number. */
final class PlungerTable {

  /** Steps in which wear is told. */
  private static final int STEPS = 10;

  private final Solver solver;
  private final ChainFacts chain;
  private final double band;

  private PlungerTable(Solver solver, ChainFacts chain) {
    this.solver = solver;
    this.chain = chain;
    band = tensioner().plunger().stepMm().orElse(PlungerStands.READ_MM);
  }

  /** Of a chain that has a tensioner. */
  static PlungerTable of(Facts facts, ChainFacts chain) {
    return new PlungerTable(facts.solver(), chain);
  }

  private Tensioner tensioner() {
    return chain.chain().tensioner().orElseThrow();
  }

  private double travel() {
    return tensioner().plunger().travelMm();
  }

  /** How wide one reading is, mm: a ratchet's step, or what a rule reads. */
  double bandMm() {
    return band;
  }

  /** Standing free, as on an engine that was turned forward and stopped. */
  Field standing() {
    OptionalDouble asNew = extension(0);
    if (asNew.isEmpty()) {
      return new Field.Reading(Field.Unit.MM, "", List.of(), Facts.NO_GEOMETRY);
    }
    double fresh = asNew.getAsDouble();
    List<Band> bands = new ArrayList<>();
    below(fresh, bands);
    bands.add(new Band(Math.max(0, fresh - band), fresh + band, asNew()));
    worn(fresh + band, bands);
    return new Field.Reading(Field.Unit.MM, between(fresh), bands, past());
  }

  private void below(double fresh, List<Band> bands) {
    if (fresh - band > 0) {
      bands.add(
          new Band(
              0,
              Math.nextDown(fresh - band),
              Judgement.wrong(
                  "Further back than a new chain of %d links leaves it: another chain, a plunger that hangs, or a model that does not fit. Find out before anything comes apart."
                      .formatted(chain.chain().links()))));
    }
  }

  private static Judgement asNew() {
    return Judgement.right("Within the band where a new chain and new faces leave it.");
  }

  /** Wear as far as the travel goes, in steps of the stretch that reads alike. */
  private void worn(double from, List<Band> bands) {
    OptionalDouble limit = StretchLimit.of(solver.drive(), chain.chain());
    double most = limit.orElse(2);
    double low = from;
    for (int i = 1; i <= STEPS && low < travel(); i++) {
      double high = i == STEPS ? travel() : extension(most * i / STEPS).orElse(travel());
      if (high > low) {
        bands.add(new Band(Math.nextUp(low), high, wear(low, high, most * i / STEPS)));
        low = high;
      }
    }
  }

  private Judgement wear(double low, double high, double percent) {
    if (high >= travel() - band / 2) {
      return Judgement.wrong(
          "At or near the end of its travel: past it the chain hangs slack. Chain, faces, sprockets and tensioner are to be judged by the maker's limits before any phaser is fitted.");
    }
    return Judgement.open(
        "Out further than new: reads like up to %s of stretch if all of it were the chain; worn faces, sprockets, centre distance, oil pressure and leak-down read alike. The maker's limit decides."
            .formatted(Numbers.percent(percent)));
  }

  /** The extension at a stretch; nothing where there is no geometry to tell. */
  private OptionalDouble extension(double percent) {
    return solver
        .solve(State.reference().stretched(chain.name(), percent))
        .chain(chain.name())
        .flatMap(c -> c.tensioner())
        .stream()
        .mapToDouble(TensionerReading::extensionMm)
        .filter(Double::isFinite)
        .findFirst();
  }

  /** What readings further out would mean, to be read without asking. */
  Optional<String> furtherOut() {
    OptionalDouble limit = StretchLimit.of(solver.drive(), chain.chain());
    if (limit.isEmpty() || extension(0).isEmpty()) {
      return Optional.empty();
    }
    StringBuilder words =
        new StringBuilder("Further out it reads like wear, if all of it were the chain: ");
    for (int i = 1; i <= 3; i++) {
      double percent = limit.getAsDouble() * i / 4;
      OptionalDouble out = extension(percent);
      if (out.isPresent()) {
        words
            .append(Numbers.percent(percent))
            .append(" at ")
            .append(Numbers.mm(out.getAsDouble()))
            .append(", ");
      }
    }
    return Optional.of(
        words
            .append("travel ends at ")
            .append(Numbers.mm(travel()))
            .append(". What is too much is the maker's limit.")
            .toString());
  }

  private String between(double mm) {
    return "new: %s to %s mm out"
        .formatted(Numbers.fixed(Math.max(0, mm - band), 1), Numbers.fixed(mm + band, 1));
  }

  private String past() {
    return "The plunger has a travel of %s: measure again from the face of its body."
        .formatted(Numbers.mm(travel()));
  }

  /** Let go while the shafts are still locked. */
  Field letGo(double mm) {
    Judgement right = Judgement.right("Where it stops with every sprocket on its right tooth.");
    Judgement far =
        Judgement.wrong(
            "Further out than the right lay lets it go while the shafts are locked: there is a link too many on the slack side. Hold it back again and count.");
    Judgement near =
        Judgement.wrong(
            "Not as far out as the right lay lets it go: it hangs, its lock is still in, or there is a link too few on the slack side. Look before anything turns.");
    List<Band> bands = new ArrayList<>();
    if (mm - band > 0) {
      bands.add(new Band(0, Math.nextDown(mm - band), near));
    }
    bands.add(new Band(Math.max(0, mm - band), mm + band, right));
    if (mm + band < travel()) {
      bands.add(new Band(Math.nextUp(mm + band), travel(), far));
    }
    return new Field.Reading(
        Field.Unit.MM,
        "right: %s to %s mm out"
            .formatted(Numbers.fixed(Math.max(0, mm - band), 1), Numbers.fixed(mm + band, 1)),
        bands,
        past());
  }

  /** Where it is held, and how much chain is over then. */
  Field held(SlackByExtension slack) {
    List<Band> bands = new ArrayList<>();
    double before = 0;
    for (int i = 1; i <= STEPS; i++) {
      double here = travel() * i / STEPS;
      double most = slack.loopMm(before);
      double least = slack.loopMm(here);
      if (Double.isFinite(most) && Double.isFinite(least)) {
        bands.add(new Band(i == 1 ? 0 : Math.nextUp(before), here, slackThere(least, most)));
      }
      before = here;
    }
    return new Field.Reading(Field.Unit.MM, "0.0 mm is fully back", bands, past());
  }

  private static Judgement slackThere(double least, double most) {
    if (most <= 0) {
      return Judgement.wrong(
          "Held so far out a new chain has no slack: a sprocket can't come off. Push it further back.");
    }
    return Judgement.open(
        "Held there, a new chain has about %s to %s mm of slack in its loop."
            .formatted(Numbers.fixed(Math.max(0, least), 1), Numbers.fixed(most, 1)));
  }
}
