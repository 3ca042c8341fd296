package tightside.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import tightside.record.Event;
import tightside.record.JobRecord;
import tightside.record.Jobs;

/** Job records read back: whole ones equal, spoilt ones as far as they go, and it is said. */
class RecordReaderTest {

  private static final Path FILE = Path.of("job.tightside-job");

  private static RecordReading read(byte[] bytes) {
    RecordReading reading = RecordReader.parse(bytes, FILE);
    reading.damage().forEach(Sentences::assertReadable);
    return reading;
  }

  private static RecordReading read(String text) {
    return read(text.getBytes(StandardCharsets.UTF_8));
  }

  private static String text(JobRecord record) {
    return new String(RecordText.of(record).bytes(), StandardCharsets.UTF_8);
  }

  @Test
  void whatIsWrittenReadsBackEqual() {
    for (long seed = 0; seed < 40; seed++) {
      JobRecord record = Jobs.record(seed, 30);
      RecordReading reading = read(RecordText.of(record).bytes());
      assertThat(reading.damage()).isEmpty();
      assertThat(reading.record()).contains(record);
    }
  }

  /** Of a file that ends anywhere, all whole lines are there, and it is said that it ends early. */
  @Test
  void cutOffAtEveryByteNothingButTheLastLineIsLost() {
    JobRecord record = Jobs.record(7, 6);
    byte[] bytes = RecordText.of(record).bytes();
    for (int length = 0; length < bytes.length - 1; length++) {
      byte[] cut = Arrays.copyOf(bytes, length);
      RecordReading reading = RecordReader.parse(cut, FILE);
      assertThat(reading.whole()).as("cut after %d", length).isFalse();
      long whole =
          new String(cut, StandardCharsets.ISO_8859_1).chars().filter(b -> b == '\n').count();
      if (whole > 0) {
        List<Event> events = reading.record().orElseThrow().events();
        assertThat(events.size()).isGreaterThanOrEqualTo((int) whole - 1);
        assertThat(events).isEqualTo(record.events().subList(0, events.size()));
      }
    }
  }

  @Test
  void everyFlippedBitShowsAndNothingElseIsLost() {
    JobRecord record = Jobs.record(3, 4);
    byte[] bytes = RecordText.of(record).bytes();
    for (int i = 0; i < bytes.length; i++) {
      byte[] spoilt = bytes.clone();
      spoilt[i] ^= (byte) (1 << i * 5 % 8);
      RecordReading reading = RecordReader.parse(spoilt, FILE);
      if (reading.whole()) {
        assertThat(reading.record()).contains(record);
        continue;
      }
      List<Event> kept =
          new ArrayList<>(reading.record().map(JobRecord::events).orElse(record.events()));
      kept.retainAll(record.events());
      assertThat(kept.size()).isGreaterThanOrEqualTo(record.events().size() - 2);
    }
  }

  @Test
  void aLineTakenOutOrMovedShows() {
    List<String> lines = text(Jobs.record(5, 10)).lines().toList();
    for (int i = 1; i < lines.size() - 1; i++) {
      List<String> fewer = new ArrayList<>(lines);
      String line = fewer.remove(i);
      assertThat(read(String.join("\n", fewer) + "\n").damage())
          .anyMatch(d -> d.contains("taken out"));
      fewer.add(i == 1 ? 2 : i - 1, line);
      assertThat(read(String.join("\n", fewer) + "\n").whole()).isFalse();
    }
  }

  @Test
  void anAnswerThatWasImprovedLaterShowsAtItsLine() {
    String text = text(Jobs.record(11, 20));
    String other = text.replaceFirst("\"verdict\":\"wrong\"", "\"verdict\":\"right\"");
    assertThat(other).isNotEqualTo(text);
    assertThat(read(other).damage())
        .hasSize(1)
        .first()
        .asString()
        .containsPattern("line \\d+ was changed");
  }

  @Test
  void aModelThatWasChangedShows() {
    String text = text(Jobs.record(1, 3));
    assertThat(read(text.replace("for practice", "for real")).damage())
        .anyMatch(d -> d.contains("model in the record"));
  }

  @Test
  void aFileThatLostItsLastLineEndIsWhole() {
    String text = text(Jobs.record(1, 3));
    assertThat(read(text.stripTrailing()).whole()).isTrue();
    assertThat(read(text.replace("\n", "\r\n")).whole()).isTrue();
  }

  @Test
  void aNewerFormatAndOtherFilesAreRefusedInOneSentence() {
    String text = text(Jobs.record(1, 3));
    assertThat(read(text.replace("\"tightside-job\":1", "\"tightside-job\":2")))
        .satisfies(r -> assertThat(r.record()).isEmpty())
        .satisfies(r -> assertThat(r.damage().get(0)).contains("format 2", "newer version"));
    for (String other : List.of("", "\n", "tightside: 1\nname: a drive\n", "{}", "[1]", "\u0000")) {
      assertThat(read(other).damage()).singleElement().asString().contains("holds no job record");
    }
    assertThat(RecordReader.read(Path.of("none")).damage().get(0)).contains("can't be read");
    assertThat(RecordReader.read(Path.of(".")).damage().get(0)).contains("can't be read");
  }

  @Test
  void withoutItsHeadTheEntriesAreLeft() {
    String text = text(Jobs.record(1, 6));
    RecordReading reading = read(text.replaceFirst("\\{", "("));
    assertThat(reading.record().orElseThrow().events()).isEqualTo(Jobs.record(1, 6).events());
    assertThat(reading.damage().get(0)).contains("shown without it");
  }

  @Test
  void spoiltRecordsNeverEscape() {
    String text = text(Jobs.record(2, 6));
    for (long seed = 0; seed < 400; seed++) {
      read(new Mutator(seed).spoilt(text));
    }
  }

  @Test
  void theSealIsTheLastLinesOwn() {
    JobRecord record = Jobs.record(4, 6);
    RecordText text = RecordText.of(record);
    assertThat(text(record)).endsWith(text.seal() + "\"}\n");
    assertThat(text.shortSeal()).matches("[0-9a-f]{4}( [0-9a-f]{4}){3}");
    assertThat(text.seal().replace(" ", "")).startsWith(text.shortSeal().replace(" ", ""));
  }
}
