package rakeline.quantity;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Declarations are public constants; this reads them off the classes that hold them, so that no list repeats them. */
public final class Declared {
    private Declared() {}

    /**
     * The constants of a type that a class declares, by name, in the order of the source.
     *
     * @param holder a public class
     */
    public static <T> Map<String, T> in(Class<?> holder, Class<T> type) {
        Map<String, T> constants = new LinkedHashMap<>();
        for (Field field : holder.getDeclaredFields()) {
            if (Modifier.isPublic(field.getModifiers()) && type.isAssignableFrom(field.getType())) {
                constants.put(field.getName(), type.cast(valueOf(field)));
            }
        }
        return Collections.unmodifiableMap(constants);
    }

    /** The constants alone. */
    public static <T> List<T> listIn(Class<?> holder, Class<T> type) {
        return List.copyOf(new ArrayList<>(in(holder, type).values()));
    }

    private static Object valueOf(Field field) {
        try {
            return field.get(null);
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(field + " is not open to read", e);
        }
    }
}
