package tightside.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tightside.drive.Chain;
import tightside.drive.Seen;
import tightside.session.Sentence.Topic;
import tightside.timing.CountJudge;
import tightside.timing.CountVerdict;
import tightside.timing.Strand;

/**
 * The counts of one chain, read and judged.
 *
 * @param verdict on those that could be read
 * @param sentences first what could not be read, then the verdict, then what stays unproved
 */
record CountReading(CountVerdict verdict, List<Sentence> sentences) {

  static CountReading of(Snapshot snapshot, Chain chain, CountJudge judge) {
    List<Sentence> sentences = new ArrayList<>();
    Map<String, Long> links = new LinkedHashMap<>();
    for (Strand strand : judge.strands()) {
      Count count = snapshot.counts().get(StrandId.of(chain.name(), strand));
      if (count == null) {
        continue;
      }
      Typed typed = count.links(chain);
      typed
          .refusal()
          .map(why -> "The count from %s is not used: %s".formatted(Words.strand(strand), why))
          .ifPresent(text -> sentences.add(new Sentence(Topic.COUNTS, text)));
      if (typed instanceof Typed.Number number) {
        links.put(strand.from(), (long) number.value());
      }
    }
    CountVerdict verdict = judge.judge(links, snapshot.cover());
    sentences.addAll(words(snapshot, chain, judge, verdict));
    return new CountReading(verdict, List.copyOf(sentences));
  }

  private static List<Sentence> words(
      Snapshot snapshot, Chain chain, CountJudge judge, CountVerdict verdict) {
    Seen cover = snapshot.cover();
    CountWords words = new CountWords(snapshot.drive(), chain.name(), judge.strands(), cover);
    List<Sentence> sentences = new ArrayList<>();
    sentences.add(new Sentence(Topic.COUNTS, words.of(verdict)));
    if (verdict instanceof CountVerdict.Fits || verdict instanceof CountVerdict.Misplaced) {
      new UnprovedWords(chain.name(), chain.links(), cover)
          .of(verdict.unproved())
          .forEach(text -> sentences.add(new Sentence(Topic.UNPROVED, text)));
    }
    return sentences;
  }
}
