package thwartwise.files;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.record.InspectionRecord;

/** The folder that holds boats, drafts and records. */
public record Workspace(Path folder) {
  public Path saveBoat(Boat boat) {
    throw new UnsupportedOperationException("not built yet: " + boat);
  }

  public Path boatPath(String name) {
    throw new UnsupportedOperationException("not built yet: " + name);
  }

  /** Returns the path of the JSON file; the page lies beside it with the ending .txt. */
  public Path saveRecord(InspectionRecord inspection, String page) {
    throw new UnsupportedOperationException("not built yet: " + inspection + page);
  }

  public void saveDraft(String name, List<DraftAnswer> answers) {
    throw new UnsupportedOperationException("not built yet: " + name + answers);
  }

  public Optional<List<DraftAnswer>> draft(String name) {
    throw new UnsupportedOperationException("not built yet: " + name);
  }

  public List<String> drafts() {
    throw new UnsupportedOperationException("not built yet");
  }

  public void deleteDraft(String name) {
    throw new UnsupportedOperationException("not built yet: " + name);
  }
}
