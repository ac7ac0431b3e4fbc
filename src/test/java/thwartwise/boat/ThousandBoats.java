package thwartwise.boat;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import net.jqwik.api.Property;

/**
 * A property of a thousand random boats, for what needs every solid built, always the same ones, so
 * that a failure comes back. To look at others change the seed here.
 */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@Property(tries = 1_000, seed = "20261125")
public @interface ThousandBoats {}
