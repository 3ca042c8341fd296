package tightside.files;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import tightside.record.Event;
import tightside.record.JobRecord;

/**
 * A job record as it stands in a file, and its seal.
 *
 * <p>Format 1 is a line of JSON for the head with the model, one for each event, and a last one
 * with the number of lines before it. Every line is a {@link SealedLine}. A file can be cut off,
 * changed or shortened anywhere and it shows; whoever makes up all the seals anew goes unseen,
 * unless the seal of the finished record was put down on paper.
 *
 * @param seal of the last line, which all lines before it went into
 */
public record RecordText(byte[] bytes, String seal) {

  /** Letters of a seal that a person can be asked to write down. */
  private static final int SHORT = 4;

  public static RecordText of(JobRecord record) {
    List<String> lines = new ArrayList<>();
    lines.add(JsonLine.of(EventWords.of(record.head())));
    for (Event event : record.events()) {
      lines.add(JsonLine.of(EventWords.of(event)));
    }
    lines.add(JsonLine.of(JsonLine.object(EventWords.LINES, lines.size())));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    String seal = "";
    for (String line : lines) {
      SealedLine sealed = SealedLine.of(line, seal);
      seal = sealed.seal();
      bytes.writeBytes(sealed.bytes());
    }
    return new RecordText(bytes.toByteArray(), seal);
  }

  /** The beginning of the seal in groups that can be copied by hand: "3f2a 91c0 7be4 55d1". */
  public String shortSeal() {
    return shortSeal(seal);
  }

  static String shortSeal(String seal) {
    List<String> groups = new ArrayList<>();
    for (int i = 0; i < SHORT; i++) {
      groups.add(seal.substring(SHORT * i, SHORT * i + SHORT));
    }
    return String.join(" ", groups);
  }
}
