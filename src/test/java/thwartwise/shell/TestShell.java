package thwartwise.shell;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.List;
import java.util.Queue;
import org.jline.reader.EndOfFileException;
import org.springframework.context.annotation.AnnotationConfigApplicationContext;
import org.springframework.shell.core.command.CommandRegistry;
import thwartwise.inspection.Inspection;

/** The whole shell in memory, with a clock that stands and answers typed beforehand. */
final class TestShell {
  static final Clock NOON = Clock.fixed(Instant.parse("2026-06-01T12:00:00Z"), ZoneOffset.UTC);

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private final Queue<String> answers = new ArrayDeque<>();
  private final CommandRunner runner;

  private TestShell(Inspector.Run inspection) {
    var context = new AnnotationConfigApplicationContext();
    context.registerBean(
        "fixedInspector",
        Inspector.class,
        () -> inspector(inspection),
        definition -> definition.setPrimary(true));
    context.register(ShellConfiguration.class);
    context.refresh();
    this.runner =
        new CommandRunner(
            context.getBean(WordsParser.class),
            context.getBean(CommandRegistry.class),
            new PrintWriter(out),
            new PrintWriter(err),
            lines());
  }

  private static Inspector inspector(Inspector.Run inspection) {
    return new Inspector(inspection, NOON, new ProgramVersion("0.0.1-test"));
  }

  static TestShell open() {
    return new TestShell(Inspection::of);
  }

  static TestShell whoseInspection(Inspector.Run inspection) {
    return new TestShell(inspection);
  }

  /** Lines for whoever asks; when they run out, the input has ended. */
  TestShell typing(String... lines) {
    answers.addAll(Arrays.asList(lines));
    return this;
  }

  int run(String... words) {
    return runner.run(List.of(words));
  }

  String out() {
    return out.toString().replace("\r\n", "\n");
  }

  String err() {
    return err.toString().replace("\r\n", "\n");
  }

  private Lines lines() {
    return prompt -> {
      out.write(prompt);
      if (answers.isEmpty()) {
        throw new EndOfFileException();
      }
      out.write(answers.peek() + "\n");
      return answers.remove();
    };
  }
}
