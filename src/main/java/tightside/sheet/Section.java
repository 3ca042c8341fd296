package tightside.sheet;

import java.util.List;

/**
 * A part of the sheet.
 *
 * @param lead what to know before its steps, each a sentence
 */
public record Section(Part part, List<String> lead, List<Step> steps) {

  public Section {
    lead = List.copyOf(lead);
    steps = List.copyOf(steps);
  }
}
