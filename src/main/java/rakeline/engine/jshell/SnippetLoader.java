package rakeline.engine.jshell;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The classes that hold snippets, in the worker. */
final class SnippetLoader extends ClassLoader {
    private final Map<String, byte[]> known = new ConcurrentHashMap<>();

    SnippetLoader() {
        super(SnippetLoader.class.getClassLoader());
    }

    /** Takes a class; it is defined when first used. */
    String add(String name, byte[] bytes) {
        known.put(name, bytes);
        return name;
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
        byte[] bytes = known.remove(name);
        if (bytes == null) {
            throw new ClassNotFoundException(name);
        }
        return defineClass(name, bytes, 0, bytes.length);
    }
}
