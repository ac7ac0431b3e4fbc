package thwartwise.checklist;

/** What is done with a checklist. */
public enum ChecklistUse {
  /** Printed with the page, to be ticked with a pen on its occasion. */
  ON_PAPER("on paper"),
  /** Asked one by one, each answer kept with the boat. */
  ASKED("asked"),
  BOTH("asked and on paper");

  private final String word;

  ChecklistUse(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  public boolean isAsked() {
    return this != ON_PAPER;
  }

  public boolean isPrinted() {
    return this != ASKED;
  }
}
