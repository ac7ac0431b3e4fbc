package thwartwise.shell;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.jline.terminal.Terminal;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.shell.core.command.CommandRegistry;

/** What the interactive shell needs beside the commands. */
@Configuration(proxyBeanMethods = false)
class PromptConfiguration {

  /** The commands, and who types them: somebody at a terminal, or a pipe. */
  @Bean
  Prompt prompt(
      List<ShellCommand> commands,
      WordsParser parser,
      CommandRegistry registry,
      ProgramVersion version) {
    Optional<Terminal> terminal = Terminals.open();
    PrintWriter out = terminal.map(Terminal::writer).orElseGet(StandardStreams::out);
    Lines piped = PipedLines.standardInput(out);
    Lines lines = terminal.<Lines>map(t -> CommandLines.at(t, commands)).orElse(piped);
    Lines answers = terminal.<Lines>map(TerminalAnswers::new).orElse(piped);
    return new Prompt(lines, out, new CommandRunner(parser, registry, out, out, answers), version);
  }
}
