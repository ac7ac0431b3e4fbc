package thwartwise.shell;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.impl.DefaultParser;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jline.terminal.spi.SystemStream;
import org.jline.terminal.spi.TerminalProvider;

/**
 * The terminal with our settings: UTF-8 whatever the locale, no colours, nothing written to disk.
 */
final class Terminals {
  /**
   * The style of the letters typed so far in a list of completions; without it they would be cyan.
   */
  private static final String TYPED_SO_FAR = "bold";

  private Terminals() {}

  /** Empty when the program is not at a terminal: its input or output is a pipe or a file. */
  static Optional<Terminal> open() {
    try {
      return (onlyPrints() ? printing() : editing()).map(Terminals::sized);
    } catch (IOException | IllegalStateException e) {
      return Optional.empty();
    }
  }

  private static boolean onlyPrints() {
    return String.valueOf(System.getenv("TERM")).startsWith(Terminal.TYPE_DUMB);
  }

  private static Optional<Terminal> editing() throws IOException {
    return Optional.of(TerminalBuilder.builder().system(true).dumb(false).encoding(UTF_8).build());
  }

  /**
   * For a terminal that can only print, the builder gives a substitute that shows every line twice
   * and ignores Ctrl-C, so the provider is asked directly.
   */
  private static Optional<Terminal> printing() throws IOException {
    for (TerminalProvider provider : providers()) {
      if (isAtTerminal(provider)) {
        return Optional.of(printing(provider));
      }
    }
    return Optional.empty();
  }

  private static List<TerminalProvider> providers() {
    return TerminalBuilder.builder().getProviders(null, new IllegalStateException());
  }

  private static boolean isAtTerminal(TerminalProvider provider) {
    return provider.isSystemStream(SystemStream.Input)
        && provider.isSystemStream(SystemStream.Output);
  }

  private static Terminal printing(TerminalProvider provider) throws IOException {
    return provider.sysTerminal(
        "thwartwise",
        Terminal.TYPE_DUMB,
        false,
        UTF_8,
        UTF_8,
        UTF_8,
        false,
        Terminal.SignalHandler.SIG_DFL,
        false,
        SystemStream.Output);
  }

  static void close(Terminal terminal) {
    try {
      terminal.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Sets a size on a terminal that reports 0 x 0, which would show dots instead of the prompt. */
  private static Terminal sized(Terminal terminal) {
    Size size = terminal.getSize();
    if (size.getColumns() <= 0 || size.getRows() <= 0) {
      terminal.setSize(new Size(80, 24));
    }
    return terminal;
  }

  /** Lines are taken as typed: no history expansion, no escapes, no colours, no history file. */
  static LineReaderBuilder editor(Terminal terminal) {
    return LineReaderBuilder.builder()
        .terminal(terminal)
        .parser(new DefaultParser().escapeChars(new char[0]).quoteChars(new char[] {'"'}))
        .variable(LineReader.COMPLETION_STYLE_STARTING, TYPED_SO_FAR)
        .variable(LineReader.COMPLETION_STYLE_LIST_STARTING, TYPED_SO_FAR)
        .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
        .option(LineReader.Option.DISABLE_HIGHLIGHTER, true)
        .option(LineReader.Option.AUTO_MENU, false)
        .option(LineReader.Option.BRACKETED_PASTE, false);
  }
}
