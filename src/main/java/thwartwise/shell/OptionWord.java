package thwartwise.shell;

import org.springframework.shell.core.command.CommandOption;

/**
 * An option of a command.
 *
 * @param name long name, without the dashes
 * @param value the word for its value on the help page; blank for a switch
 * @param meaning what it is for, one line without a full stop
 */
record OptionWord(String name, String value, String meaning, boolean required) {

  /** May be left out where there is only one saved boat. */
  static final OptionWord BOAT =
      new OptionWord("boat", "BOAT", "a boat kept here or a file; left out, the only one", false);

  static final OptionWord JSON =
      new OptionWord("json", "", "print the report as JSON and nothing else", false);
  static final OptionWord BY = new OptionWord("by", "NAME", "who makes this inspection", false);
  static final OptionWord HTML =
      new OptionWord("html", "FILE", "write it into that file as a page to show and print", false);
  static final OptionWord FOLDER =
      new OptionWord("folder", "DIR", "where boats, drafts and records are kept", false);

  static final OptionWord RULES =
      new OptionWord("rules", "FILE", "a rule set to apply as well; may be given again", false);

  /** A file may be followed by another; other options occur once. */
  boolean repeatable() {
    return equals(RULES);
  }

  String flag() {
    return "--" + name;
  }

  /** Whether its value is, or may be, a file or folder. */
  boolean isPath() {
    return value.equals("FILE") || value.equals("DIR") || value.equals("BOAT");
  }

  boolean isSwitch() {
    return value.isEmpty();
  }

  /** The flag and the word for its value, as typed on a line. */
  String shown() {
    return isSwitch() ? flag() : flag() + " " + value;
  }

  /** The same option in the words of the shell library. */
  CommandOption option() {
    return described().build();
  }

  CommandOption with(String given) {
    return described().value(given).build();
  }

  private CommandOption.Builder described() {
    return CommandOption.with()
        .longName(name)
        .description(meaning)
        .required(required)
        .type(isSwitch() ? boolean.class : String.class);
  }
}
