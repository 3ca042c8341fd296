package tightside.sheet;

import java.util.List;

/** What a step asks a person to enter, and what an entry is judged by. */
public sealed interface Field {

  /** What an entry says; the wrong kind of entry can't be judged. */
  Judgement judge(Entry entry);

  /** A box to tick when the step is done. */
  record Tick() implements Field {
    @Override
    public Judgement judge(Entry entry) {
      if (!(entry instanceof Entry.Answer answer)) {
        return Fields.unfit("a tick");
      }
      return answer.yes() ? Judgement.right("Done.") : Judgement.open("Not done yet.");
    }
  }

  /**
   * A question with yes and no.
   *
   * @param yes what yes means
   * @param no what no means, and what to do then
   */
  record YesNo(Judgement yes, Judgement no) implements Field {
    @Override
    public Judgement judge(Entry entry) {
      if (!(entry instanceof Entry.Answer answer)) {
        return Fields.unfit("yes or no");
      }
      return answer.yes() ? yes : no;
    }
  }

  /**
   * A whole number of links from one mark to the next.
   *
   * @param right the links that belong there
   * @param most the links of the whole chain
   */
  record Links(String chain, String from, String to, long right, long most) implements Field {

    /** The plain links between the two marked ones. */
    public long between() {
      return right - 1;
    }

    @Override
    public Judgement judge(Entry entry) {
      return entry instanceof Entry.Number number
          ? Fields.links(this, number.value())
          : Fields.unfit("a whole number of links");
    }
  }

  /** In what a reading is taken. */
  enum Unit {
    MM("mm"),
    /** Of the shaft that is looked at, without a sign. */
    SHAFT_DEGREES("degrees"),
    TEETH("teeth");

    private final String sign;

    Unit(String sign) {
      this.sign = sign;
    }

    public String sign() {
      return sign;
    }
  }

  /**
   * A reading that is judged by the band it falls in.
   *
   * @param expected in a few words, to stand beside the blank
   * @param bands in rising order; readings in none of them can't be judged
   * @param otherwise what is said of those
   */
  record Reading(Unit unit, String expected, List<Band> bands, String otherwise) implements Field {
    public Reading {
      bands = List.copyOf(bands);
    }

    @Override
    public Judgement judge(Entry entry) {
      if (!(entry instanceof Entry.Number number)) {
        return Fields.unfit("a number in " + unit.sign());
      }
      return bands.stream()
          .filter(band -> band.holds(number.value()))
          .map(Band::says)
          .findFirst()
          .orElseGet(() -> Judgement.open(otherwise));
    }
  }

  /**
   * A value that the maker's procedure gives; nothing here judges it.
   *
   * @param unit as it is written behind the blank; empty where the maker's words are wanted
   */
  record Maker(String what, String unit) implements Field {
    @Override
    public Judgement judge(Entry entry) {
      return Judgement.open("Kept as entered: only the maker's procedure can judge it.");
    }
  }

  /** Free words. */
  record Note() implements Field {
    @Override
    public Judgement judge(Entry entry) {
      return Judgement.open("Kept as written.");
    }
  }

  /** Nothing to enter: a caution, or something to know. */
  record Nothing() implements Field {
    @Override
    public Judgement judge(Entry entry) {
      return Judgement.open("There is nothing to enter here.");
    }
  }
}
