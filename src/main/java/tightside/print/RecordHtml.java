package tightside.print;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tightside.files.RecordText;
import tightside.record.Event;
import tightside.record.JobRecord;
import tightside.record.ModelText;

/** The record of a job on paper, as it was filled in: the proof that outlives the day. */
public final class RecordHtml {

  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("d MMMM yyyy, HH:mm:ss (XXX)", Locale.ENGLISH);

  /** Letters of a digest that are printed together. */
  private static final int GROUP = 8;

  private RecordHtml() {}

  /**
   * The record as a page.
   *
   * @param damage what was found wrong with its file, each a sentence
   * @param zone in which moments are told
   */
  public static String of(JobRecord record, List<String> damage, ZoneId zone, Paper paper) {
    RecordText text = RecordText.of(record);
    String name = record.model().name();
    Map<String, Object> page = new HashMap<>();
    page.put("css", SheetHtml.css(paper));
    page.put("name", name);
    page.put("head", SheetHtml.shortened("Job record: " + name));
    page.put("begun", moment(record.head().begun(), zone));
    page.put("finished", finished(record, zone));
    page.put("by", record.head().by());
    page.put("short", text.shortSeal());
    page.put("seal", grouped(text.seal()));
    page.put("models", models(record));
    page.put("damage", damage);
    page.put("damaged", !damage.isEmpty());
    page.put("note", record.progress().note());
    List<String> open = record.progress().leftOpen().orElse(List.of());
    page.put("open", open);
    page.put("anyOpen", !open.isEmpty());
    page.put("days", RecordRows.of(record, zone));
    return Template.fill("record.mustache", page);
  }

  private static String moment(Instant at, ZoneId zone) {
    return MOMENT.format(at.atZone(zone));
  }

  private static String finished(JobRecord record, ZoneId zone) {
    Optional<Instant> first = record.finishedAt();
    if (first.isEmpty()) {
      return "not finished";
    }
    String finished = "finished " + moment(first.get(), zone);
    return record.afterFinishing().isEmpty()
        ? finished + ", and not changed since"
        : finished + ", and CHANGED since: see below";
  }

  /** Every model the job was done with, the first one first. */
  private static List<Map<String, Object>> models(JobRecord record) {
    List<ModelText> models = new ArrayList<>(List.of(record.head().model()));
    for (Event event : record.events()) {
      if (event instanceof Event.Remodelled redrawn) {
        models.add(redrawn.model());
      }
    }
    return models.stream().map(RecordHtml::model).toList();
  }

  private static Map<String, Object> model(ModelText model) {
    return Map.of(
        "name", model.name(),
        "place", model.place(),
        "sha", model.sha256().isEmpty() ? "unknown" : grouped(model.sha256()),
        "broken", !model.intact());
  }

  private static String grouped(String digest) {
    return digest.replaceAll("(.{" + GROUP + "})(?!$)", "$1 ");
  }
}
