package thwartwise.measured;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.measured.BoatProperties.PropertyGroup;

class PropertyGroupTest {
  /** A property that is declared and stands in no group is neither printed nor in the schema. */
  @Test
  void every_property_stands_in_one_group() throws IllegalAccessException {
    List<Object> declared = new ArrayList<>();
    for (Class<?> table :
        List.of(
            BoatProperties.class,
            PartProperties.class,
            OutfitProperties.class,
            ElectricalProperties.class)) {
      for (Field field : table.getDeclaredFields()) {
        if (field.getType() == Property.class) {
          declared.add(field.get(null));
        }
      }
    }
    List<Object> grouped = new ArrayList<>();
    PropertyGroup.ALL.forEach(group -> grouped.addAll(group.properties()));
    assertThat(declared).hasSizeGreaterThan(65);
    assertThat(grouped).containsExactlyInAnyOrderElementsOf(declared);
  }
}
