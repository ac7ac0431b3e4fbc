package thwartwise.json;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.Collection;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Java records as JSON and back, component by component: names of components are keys, names of
 * enum constants are words, SI stays SI. A member of a sealed family also names its kind. An object
 * mapper would do the same, but would cost every start more time than reading all files.
 */
public final class RecordCodec {
  private static final String KIND = "is";

  /** The kind that has words alone, in every family that has one. */
  private static final String IN_WORDS = "Stated";

  private static final String REMEDY = "Take the file as it was written.";

  private RecordCodec() {}

  public static ObjectNode write(Record record) {
    ObjectNode node = JsonText.object();
    if (family(record.getClass()).isPresent()) {
      node.put(KIND, record.getClass().getSimpleName());
    }
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      set(node, component.getName(), value(component, record));
    }
    return node;
  }

  private static void set(ObjectNode node, String key, Object value) {
    if (value instanceof Double || value instanceof OptionalDouble) {
      Figures.put(
          node, key, value instanceof Double d ? d : ((OptionalDouble) value).orElse(Double.NaN));
    } else if (value instanceof Record record && isWords(record.getClass())) {
      node.set(key, tree(value(record.getClass().getRecordComponents()[0], record)));
    } else {
      node.set(key, tree(value));
    }
  }

  private static boolean isWords(Class<?> kind) {
    return kind.getSimpleName().equals(IN_WORDS);
  }

  private static JsonNode tree(Object value) {
    JsonNodeFactory make = JsonNodeFactory.instance;
    if (value instanceof Record record) {
      return write(record);
    }
    if (value instanceof Collection<?> items) {
      ArrayNode list = JsonText.list();
      items.forEach(item -> list.add(tree(item)));
      return list;
    }
    if (value instanceof Optional<?> optional) {
      return optional.map(RecordCodec::tree).orElse(make.nullNode());
    }
    if (value instanceof Integer number) {
      return make.numberNode(number);
    }
    if (value instanceof Boolean truth) {
      return make.booleanNode(truth);
    }
    return make.stringNode(value instanceof Enum<?> constant ? constant.name() : (String) value);
  }

  /**
   * The value of a key.
   *
   * @param otherwise for a file without it, or with one of a kind that this program does not know
   */
  public static <T> T read(
      ObjectReader parent, String key, Class<T> family, Supplier<T> otherwise) {
    if (!parent.hasValue(key)) {
      return otherwise.get();
    }
    ObjectReader object = parent.freeObject(key, REMEDY);
    return read(object, family).orElseGet(otherwise);
  }

  /** The value; empty for a kind that this program does not know. */
  public static <T> Optional<T> read(ObjectReader object, Class<T> family) {
    return kind(object, family).map(type -> made(object, type));
  }

  private static <T> Optional<Class<? extends T>> kind(ObjectReader object, Class<T> family) {
    if (!family.isSealed()) {
      return Optional.of(family);
    }
    String kind = object.value(KIND, REMEDY).anyText();
    return Arrays.stream(family.getPermittedSubclasses())
        .filter(type -> type.getSimpleName().equals(kind))
        .<Class<? extends T>>map(type -> type.asSubclass(family))
        .findFirst();
  }

  private static <T> T made(ObjectReader object, Class<T> type) {
    RecordComponent[] components = type.getRecordComponents();
    Object[] values =
        Arrays.stream(components).map(c -> read(object, c.getName(), c.getGenericType())).toArray();
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    return construct(type, types, values, object.spot());
  }

  private static <T> T construct(Class<T> type, Class<?>[] types, Object[] values, Location spot) {
    try {
      return type.getConstructor(types).newInstance(values);
    } catch (InvocationTargetException e) {
      throw spot.fault("this does not fit together. " + REMEDY);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("A record without its constructor: " + type, e);
    }
  }

  private static Object read(ObjectReader object, String key, Type type) {
    if (type == double.class) {
      return Figures.read(object, key);
    }
    if (type == OptionalDouble.class) {
      return Figures.optional(object, key);
    }
    ValueReader value = object.value(key, REMEDY);
    if (type instanceof ParameterizedType of) {
      Class<?> item = (Class<?>) of.getActualTypeArguments()[0];
      if (of.getRawType() == Optional.class) {
        return object.hasValue(key) ? Optional.of(read(object, key, item)) : Optional.empty();
      }
      if (item.isEnum()) {
        WordChoice<Object> words = constants(item);
        return value.list().stream().map(v -> v.oneOf(words, REMEDY)).toList();
      }
      return item == String.class
          ? value.texts()
          : object.freeItems(key, "item", REMEDY).stream().map(o -> whole(o, item)).toList();
    }
    return single(object, key, value, (Class<?>) type);
  }

  private static Object single(ObjectReader object, String key, ValueReader value, Class<?> type) {
    if (type == int.class) {
      return value.whole(BoatQuantity.ANY, REMEDY);
    }
    if (type == boolean.class) {
      return value.bool();
    }
    if (type == String.class) {
      return value.anyText();
    }
    return type.isEnum()
        ? value.oneOf(constants(type), REMEDY)
        : stated(value, type).orElseGet(() -> whole(object.freeObject(key, REMEDY), type));
  }

  /** The words, where older files have no more, for a family that has a kind for words alone. */
  private static Optional<Object> stated(ValueReader value, Class<?> type) {
    if (!type.isSealed() || !value.node().isString()) {
      return Optional.empty();
    }
    Object[] words = {value.anyText()};
    return Arrays.stream(type.getPermittedSubclasses())
        .filter(RecordCodec::isWords)
        .findFirst()
        .map(kind -> construct(kind, new Class<?>[] {String.class}, words, value.spot()));
  }

  private static Object whole(ObjectReader object, Class<?> type) {
    return read(object, type)
        .orElseThrow(
            () ->
                object
                    .spot()
                    .fault("the kind of this is not known. Read it with a newer program."));
  }

  private static WordChoice<Object> constants(Class<?> type) {
    return WordChoice.of(c -> ((Enum<?>) c).name(), type.getEnumConstants());
  }

  private static Optional<Class<?>> family(Class<?> type) {
    return Arrays.stream(type.getInterfaces()).filter(Class::isSealed).findFirst();
  }

  private static Object value(RecordComponent component, Record record) {
    try {
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("A record without its component: " + component, e);
    }
  }
}
