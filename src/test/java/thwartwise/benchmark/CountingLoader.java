package thwartwise.benchmark;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Set;
import org.springframework.asm.ClassReader;
import org.springframework.asm.ClassVisitor;
import org.springframework.asm.ClassWriter;
import org.springframework.asm.MethodVisitor;
import org.springframework.asm.Opcodes;

/**
 * Loads the program once more with calls to {@link Count} written into the engine, so that it can
 * be counted what the program itself never counts.
 */
final class CountingLoader extends ClassLoader {
  private static final int API = Opcodes.ASM9;
  private static final String COUNT = Count.class.getName().replace('.', '/');
  private static final String IMMERSION = "thwartwise.geometry.Immersion";
  private static final String EQUILIBRIUM = "thwartwise.afloat.Equilibrium";

  CountingLoader() {
    super(CountingLoader.class.getClassLoader());
  }

  @Override
  protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
    boolean ours = name.startsWith("thwartwise.") && !name.equals(Count.class.getName());
    if (!ours) {
      return super.loadClass(name, resolve);
    }
    synchronized (getClassLoadingLock(name)) {
      Class<?> known = findLoadedClass(name);
      return known == null ? defined(name) : known;
    }
  }

  private Class<?> defined(String name) throws ClassNotFoundException {
    try (InputStream in = getResourceAsStream(name.replace('.', '/') + ".class")) {
      if (in == null) {
        throw new ClassNotFoundException(name);
      }
      byte[] code = in.readAllBytes();
      boolean counted = Set.of(IMMERSION, EQUILIBRIUM).contains(name);
      byte[] written = counted ? counting(code) : code;
      return defineClass(name, written, 0, written.length);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] counting(byte[] code) {
    ClassReader reader = new ClassReader(code);
    ClassWriter writer = new ClassWriter(reader, ClassWriter.COMPUTE_MAXS);
    reader.accept(new Calls(writer), 0);
    return writer.toByteArray();
  }

  /** Writes the calls into the methods that are counted. */
  private static final class Calls extends ClassVisitor {
    Calls(ClassVisitor next) {
      super(API, next);
    }

    @Override
    public MethodVisitor visitMethod(
        int access, String name, String descriptor, String signature, String[] thrown) {
      MethodVisitor next = super.visitMethod(access, name, descriptor, signature, thrown);
      return switch (name) {
        case "at" -> new Call(next, "plane", "");
        case "search" -> new Call(next, "begin", "()V");
        case "nextTo" -> new Call(next, "begin", "(Ljava/util/Optional;)V");
        default -> next;
      };
    }
  }

  /**
   * One call at the beginning of a method, and one where it returns.
   *
   * @see Count#end(java.util.Optional)
   */
  private static final class Call extends MethodVisitor {
    private final String first;
    private final String ending;

    Call(MethodVisitor next, String first, String ending) {
      super(API, next);
      this.first = first;
      this.ending = ending;
    }

    @Override
    public void visitCode() {
      super.visitCode();
      super.visitMethodInsn(Opcodes.INVOKESTATIC, COUNT, first, "()V", false);
    }

    @Override
    public void visitInsn(int opcode) {
      if (opcode == Opcodes.ARETURN && !ending.isEmpty()) {
        if (ending.startsWith("(L")) {
          super.visitInsn(Opcodes.DUP);
        }
        super.visitMethodInsn(Opcodes.INVOKESTATIC, COUNT, "end", ending, false);
      }
      super.visitInsn(opcode);
    }
  }
}
