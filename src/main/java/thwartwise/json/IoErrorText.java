package thwartwise.json;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Why the system would not read or write, in words instead of the name of an exception. */
public final class IoErrorText {
  private IoErrorText() {}

  public static String of(IOException e) {
    if (e instanceof AccessDeniedException) {
      return "permission is denied";
    }
    if (e instanceof FileAlreadyExistsException) {
      return "a file stands where a folder is needed";
    }
    if (e instanceof NoSuchFileException) {
      return "it is no longer there";
    }
    boolean hasReason = e instanceof FileSystemException f && f.getReason() != null;
    return hasReason ? ((FileSystemException) e).getReason() : "the system refused";
  }
}
