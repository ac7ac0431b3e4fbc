package thwartwise.shell;

import java.time.Clock;
import java.util.List;
import org.springframework.beans.factory.ListableBeanFactory;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.shell.core.command.CommandRegistry;
import thwartwise.inspection.Inspection;

/**
 * The commands, in the order help lists them.
 *
 * <p>The shell library's own {@code help}, {@code version}, {@code script} and {@code clear} are
 * left out: its annotation that enables commands would bring them all.
 */
@Configuration(proxyBeanMethods = false)
class ShellConfiguration {

  @Bean
  Clock clock() {
    return Clock.systemDefaultZone();
  }

  @Bean
  ProgramVersion programVersion() {
    return ProgramVersion.ofThisJar();
  }

  @Bean
  Inspector inspector(Clock clock, ProgramVersion version) {
    return new Inspector(Inspection::of, clock, version);
  }

  @Bean
  @Order(1)
  WalkCommand walkCommand(Inspector inspector) {
    return new WalkCommand(inspector);
  }

  @Bean
  @Order(2)
  RefitCommand refitCommand(WalkCommand walk) {
    return new RefitCommand(walk);
  }

  @Bean
  @Order(3)
  InspectCommand inspectCommand(Inspector inspector) {
    return new InspectCommand(inspector);
  }

  @Bean
  @Order(4)
  SeatsCommand seatsCommand(Inspector inspector) {
    return new SeatsCommand(inspector);
  }

  @Bean
  @Order(5)
  TodayCommand todayCommand(Inspector inspector) {
    return new TodayCommand(inspector);
  }

  @Bean
  @Order(6)
  RecordsCommand recordsCommand() {
    return new RecordsCommand();
  }

  @Bean
  @Order(7)
  CompareCommand compareCommand() {
    return new CompareCommand();
  }

  @Bean
  @Order(8)
  FleetCommand fleetCommand(Inspector inspector) {
    return new FleetCommand(inspector);
  }

  @Bean
  @Order(9)
  DemoCommand demoCommand(Inspector inspector) {
    return new DemoCommand(inspector);
  }

  @Bean
  @Order(10)
  HelpCommand helpCommand(ListableBeanFactory beans) {
    return new HelpCommand(
        () -> beans.getBeanProvider(ShellCommand.class).orderedStream().toList());
  }

  @Bean
  @Order(11)
  VersionCommand versionCommand(ProgramVersion version) {
    return new VersionCommand(version);
  }

  @Bean
  @Order(12)
  QuitCommand quitCommand() {
    return new QuitCommand();
  }

  /** Collects every command of the context by itself. */
  @Bean
  CommandRegistry commandRegistry() {
    return new CommandRegistry();
  }

  @Bean
  WordsParser wordsParser(List<ShellCommand> commands) {
    return new WordsParser(commands);
  }
}
