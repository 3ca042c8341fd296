package tightside.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** One command line as its user sees it: exit code, standard output, standard error. */
record Run(int code, String out, String err) {

  static final String ANSWERED = "models/two-cams-arm.yaml";

  static Run of(String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Tightside.run(words, new PrintWriter(out), new PrintWriter(err));
    return new Run(code, out.toString(), err.toString());
  }

  JsonNode json() {
    return JsonMapper.shared().readTree(out);
  }
}
