package tightside.files;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tightside.files.EventReader.NotUnderstood;
import tightside.record.Event;
import tightside.record.Head;
import tightside.record.JobRecord;
import tightside.record.ModelText;
import tools.jackson.databind.JsonNode;

/**
 * Reads job records: all that can be read of a file, with a sentence for each thing that is not as
 * it was written. What is left over of a damaged record is worth more than none.
 */
public final class RecordReader {

  /** A record has some hundred KiB. */
  static final int LARGEST = 1 << 25;

  /** Nobody reads more of what is wrong. */
  private static final int MOST = 20;

  private final List<Event> events = new ArrayList<>();
  private final List<String> damage = new ArrayList<>();
  private Optional<Head> head = Optional.empty();

  /** The seals that the next line may follow: the one that stands there, and the one due. */
  private List<String> before = List.of("");

  private boolean ended;

  private RecordReader() {}

  /** Reads a file. */
  public static RecordReading read(Path file) {
    try {
      return parse(bytes(file), file);
    } catch (IOException e) {
      return refused(Fault.RECORD_CLOSED, Map.of("path", file.toString()));
    }
  }

  static byte[] bytes(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(LARGEST + 1);
    }
  }

  /**
   * @param file named in what is said
   */
  static RecordReading parse(byte[] bytes, Path file) {
    Map<String, Object> path = Map.of("path", file.toString());
    if (bytes.length > LARGEST) {
      return refused(Fault.RECORD_TOO_LARGE, path);
    }
    List<byte[]> lines = lines(bytes);
    Optional<String> version = future(lines);
    if (version.isPresent()) {
      Map<String, Object> facts = Map.of("path", file.toString(), "version", version.get());
      return refused(Fault.RECORD_FUTURE, facts);
    }
    RecordReader reader = new RecordReader();
    for (int i = 0; i < lines.size(); i++) {
      reader.line(lines.get(i), i + 1);
    }
    if (reader.head.isEmpty() && reader.events.isEmpty()) {
      return refused(Fault.RECORD_NONE, path);
    }
    return reader.reading();
  }

  private static RecordReading refused(Fault fault, Map<String, Object> facts) {
    return new RecordReading(Optional.empty(), List.of(Catalogue.sentence(fault, facts)));
  }

  private static List<byte[]> lines(byte[] bytes) {
    List<byte[]> lines = new ArrayList<>();
    int start = 0;
    while (start < bytes.length) {
      int end = start;
      while (end < bytes.length && bytes[end] != '\n') {
        end++;
      }
      boolean carriage = end > start && bytes[end - 1] == '\r';
      lines.add(Arrays.copyOfRange(bytes, start, carriage ? end - 1 : end));
      start = end + 1;
    }
    return lines;
  }

  /** The version of a record that is newer than this program. */
  private static Optional<String> future(List<byte[]> lines) {
    if (lines.isEmpty()) {
      return Optional.empty();
    }
    try {
      return EventReader.of(new String(lines.get(0), StandardCharsets.UTF_8))
          .version()
          .map(JsonNode::bigIntegerValue)
          .filter(version -> version.compareTo(BigInteger.valueOf(EventWords.FORMAT)) > 0)
          .map(BigInteger::toString);
    } catch (NotUnderstood e) {
      return Optional.empty();
    }
  }

  private void line(byte[] bytes, int number) {
    Optional<SealedLine> sealed = SealedLine.read(bytes);
    try {
      if (sealed.isEmpty()) {
        throw new NotUnderstood();
      }
      understand(EventReader.of(sealed.get().json()), number);
      if (!sealed.get().follows(before)) {
        tell(Fault.RECORD_SEAL_BROKEN, number);
      }
    } catch (NotUnderstood e) {
      tell(number == 1 ? Fault.RECORD_HEAD_LOST : Fault.RECORD_LINE_LOST, number);
    }
    if (sealed.isPresent()) {
      before = List.of(sealed.get().seal(), sealed.get().due(before.get(0)));
    }
  }

  private void understand(EventReader line, int number) throws NotUnderstood {
    Optional<Integer> count = line.lines();
    if (number == 1) {
      line.version().orElseThrow(NotUnderstood::new);
      head = Optional.of(line.head());
    } else if (count.isPresent()) {
      if (ended || count.get() != number - 1) {
        tell(Fault.RECORD_LINES_OUT, number);
      }
      ended = true;
    } else {
      events.add(line.event());
      if (ended) {
        tell(Fault.RECORD_LINES_OUT, number);
      }
    }
  }

  private void tell(Fault fault, int line) {
    String sentence = Catalogue.sentence(fault, Map.of("line", line));
    if (damage.size() < MOST && !damage.contains(sentence)) {
      damage.add(sentence);
    }
  }

  private RecordReading reading() {
    head.map(Head::model)
        .filter(model -> !model.intact())
        .ifPresent(model -> tell(Fault.RECORD_MODEL_CHANGED, 1));
    if (!ended) {
      tell(Fault.RECORD_CUT_OFF, 1);
    }
    Head known = head.orElseGet(this::unknown);
    return new RecordReading(Optional.of(new JobRecord(known, events)), damage);
  }

  private Head unknown() {
    Instant begun = events.get(0).at();
    return new Head(begun, "", new ModelText("", "", "", ""));
  }
}
