package rakeline.prelude;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Stream;
import rakeline.geometry.Bike;

/** Every method that a row of a worksheet is meant to call, found by reflection. */
public final class RowWords {
    private static final Set<String> OF_ANY_OBJECT = Set.of("equals", "hashCode", "toString");

    private RowWords() {}

    /** The methods of the facades, of what they return among the types that are being said, and of bikes. */
    public static Set<Method> all() {
        Deque<Class<?>> open = new ArrayDeque<>(Prelude.FACADES);
        open.add(Bike.class);
        Set<Class<?>> seen = new LinkedHashSet<>(open);
        Set<Method> found = new LinkedHashSet<>();
        while (!open.isEmpty()) {
            methods(open.pop()).forEach(method -> {
                found.add(method);
                if (method.getReturnType().getPackage() == Prelude.class.getPackage()
                        && seen.add(method.getReturnType())) {
                    open.add(method.getReturnType());
                }
            });
        }
        return found;
    }

    private static Stream<Method> methods(Class<?> type) {
        return Arrays.stream(type.getDeclaredMethods())
                .filter(method -> Modifier.isPublic(method.getModifiers()) && !method.isSynthetic())
                .filter(method -> !OF_ANY_OBJECT.contains(method.getName()))
                .filter(method -> !Modifier.isStatic(method.getModifiers()) || Prelude.FACADES.contains(type));
    }
}
