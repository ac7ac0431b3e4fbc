package thwartwise.archive;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.net.URI;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.StandardOpenOption;
import java.nio.file.WatchService;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.StreamSupport;

/**
 * The machine's own disk, that fails at the step it is told to: every file opened for writing,
 * made, moved or deleted is a step.
 */
final class FailingDisk extends FileSystem {
  /** What the system says when there is no room. */
  static final String FULL = "No space left on device";

  /** Like a power cut: nothing is written from then on. */
  static final class Killed extends Error {
    private static final long serialVersionUID = 1L;
  }

  private final FileSystem real;
  private final FileSystemProvider provider = new Provider();
  private final List<String> steps = new ArrayList<>();
  private int failing = Integer.MAX_VALUE;
  private boolean dies;
  private String refused = "";

  private FailingDisk(FileSystem real) {
    this.real = real;
  }

  static FailingDisk of(Path folder) {
    return new FailingDisk(folder.getFileSystem());
  }

  /** From that step on nothing is written, and whoever tries is killed. */
  FailingDisk dyingAt(int step) {
    failing = step;
    dies = true;
    return this;
  }

  /** That step alone is refused for want of room. */
  FailingDisk fullAt(int step) {
    failing = step;
    return this;
  }

  /** Every writing to a file of that name is refused. */
  FailingDisk refusing(String name) {
    refused = name;
    return this;
  }

  /** What was done, in order. */
  List<String> steps() {
    return steps;
  }

  Path path(Path real) {
    return (Path)
        Proxy.newProxyInstance(
            getClass().getClassLoader(),
            new Class<?>[] {Path.class, Wrapped.class},
            (proxy, method, arguments) -> {
              switch (method.getName()) {
                case "real":
                  return real;
                case "getFileSystem":
                  return this;
                default:
                  return invoked(real, method, arguments);
              }
            });
  }

  private interface Wrapped {
    Path real();
  }

  private Object invoked(Path on, java.lang.reflect.Method method, Object[] arguments)
      throws Throwable {
    Object[] bare =
        arguments == null
            ? null
            : Arrays.stream(arguments).map(a -> a instanceof Wrapped w ? w.real() : a).toArray();
    try {
      return wrapped(method.invoke(on, bare));
    } catch (InvocationTargetException e) {
      throw e.getCause();
    }
  }

  private Object wrapped(Object result) {
    if (result instanceof Path path) {
      return path(path);
    }
    if (result instanceof Iterator<?> parts) {
      List<Path> all = new ArrayList<>();
      parts.forEachRemaining(part -> all.add(path((Path) part)));
      return all.iterator();
    }
    return result;
  }

  private static Path bare(Path path) {
    return path instanceof Wrapped wrapped ? wrapped.real() : path;
  }

  private void step(String what, Path file) throws IOException {
    steps.add(what + " " + bare(file).getFileName());
    if (!refused.isEmpty() && bare(file).endsWith(refused)) {
      throw new IOException("refused by the test");
    }
    if (steps.size() == failing && !dies) {
      throw new IOException(FULL);
    }
    if (steps.size() >= failing && dies) {
      throw new Killed();
    }
  }

  private static boolean writes(Set<? extends OpenOption> options) {
    return options.contains(StandardOpenOption.WRITE);
  }

  private final class Provider extends FileSystemProvider {
    @Override
    public FileChannel newFileChannel(
        Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
        throws IOException {
      if (writes(options)) {
        step("write", path);
      }
      return real.provider().newFileChannel(bare(path), options, attributes);
    }

    @Override
    public SeekableByteChannel newByteChannel(
        Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
        throws IOException {
      if (writes(options)) {
        step("write", path);
      }
      return real.provider().newByteChannel(bare(path), options, attributes);
    }

    @Override
    public DirectoryStream<Path> newDirectoryStream(
        Path folder, DirectoryStream.Filter<? super Path> filter) throws IOException {
      DirectoryStream<Path> all =
          real.provider().newDirectoryStream(bare(folder), file -> filter.accept(path(file)));
      return new DirectoryStream<>() {
        @Override
        public Iterator<Path> iterator() {
          return StreamSupport.stream(all.spliterator(), false)
              .map(FailingDisk.this::path)
              .iterator();
        }

        @Override
        public void close() throws IOException {
          all.close();
        }
      };
    }

    @Override
    public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
      step("make", folder);
      real.provider().createDirectory(bare(folder), attributes);
    }

    @Override
    public void delete(Path path) throws IOException {
      step("delete", path);
      real.provider().delete(bare(path));
    }

    @Override
    public void copy(Path source, Path target, CopyOption... options) throws IOException {
      step("copy", target);
      real.provider().copy(bare(source), bare(target), options);
    }

    @Override
    public void move(Path source, Path target, CopyOption... options) throws IOException {
      step("move", target);
      real.provider().move(bare(source), bare(target), options);
    }

    @Override
    public boolean isSameFile(Path path, Path other) throws IOException {
      return real.provider().isSameFile(bare(path), bare(other));
    }

    @Override
    public boolean isHidden(Path path) throws IOException {
      return real.provider().isHidden(bare(path));
    }

    @Override
    public FileStore getFileStore(Path path) throws IOException {
      return real.provider().getFileStore(bare(path));
    }

    @Override
    public void checkAccess(Path path, AccessMode... modes) throws IOException {
      real.provider().checkAccess(bare(path), modes);
    }

    @Override
    public <V extends FileAttributeView> V getFileAttributeView(
        Path path, Class<V> type, LinkOption... options) {
      return real.provider().getFileAttributeView(bare(path), type, options);
    }

    @Override
    public <A extends BasicFileAttributes> A readAttributes(
        Path path, Class<A> type, LinkOption... options) throws IOException {
      return real.provider().readAttributes(bare(path), type, options);
    }

    @Override
    public Map<String, Object> readAttributes(Path path, String names, LinkOption... options)
        throws IOException {
      return real.provider().readAttributes(bare(path), names, options);
    }

    @Override
    public void setAttribute(Path path, String name, Object value, LinkOption... options)
        throws IOException {
      real.provider().setAttribute(bare(path), name, value, options);
    }

    @Override
    public String getScheme() {
      return "failing";
    }

    @Override
    public FileSystem newFileSystem(URI uri, Map<String, ?> environment) {
      throw new UnsupportedOperationException();
    }

    @Override
    public FileSystem getFileSystem(URI uri) {
      throw new UnsupportedOperationException();
    }

    @Override
    public Path getPath(URI uri) {
      throw new UnsupportedOperationException();
    }
  }

  @Override
  public FileSystemProvider provider() {
    return provider;
  }

  @Override
  public PathMatcher getPathMatcher(String pattern) {
    PathMatcher matcher = real.getPathMatcher(pattern);
    return path -> matcher.matches(bare(path));
  }

  @Override
  public Path getPath(String first, String... more) {
    return path(real.getPath(first, more));
  }

  @Override
  public void close() {
    // The machine's own stays open.
  }

  @Override
  public boolean isOpen() {
    return true;
  }

  @Override
  public boolean isReadOnly() {
    return false;
  }

  @Override
  public String getSeparator() {
    return real.getSeparator();
  }

  @Override
  public Iterable<Path> getRootDirectories() {
    throw new UnsupportedOperationException();
  }

  @Override
  public Iterable<FileStore> getFileStores() {
    return real.getFileStores();
  }

  @Override
  public Set<String> supportedFileAttributeViews() {
    return real.supportedFileAttributeViews();
  }

  @Override
  public UserPrincipalLookupService getUserPrincipalLookupService() {
    return real.getUserPrincipalLookupService();
  }

  @Override
  public WatchService newWatchService() {
    throw new UnsupportedOperationException();
  }
}
