package stirtide.planner.planning.search;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Copies of records with one component changed. */
public final class Altered {
    private Altered() {}

    /** A copy of a record in which one component has another value. */
    @SuppressWarnings("unchecked")
    public static <T extends Record> T with(T record, String component, Object value) {
        RecordComponent[] parts = record.getClass().getRecordComponents();
        Object[] values = new Object[parts.length];
        boolean found = false;
        try {
            for (int i = 0; i < parts.length; i++) {
                boolean here = parts[i].getName().equals(component);
                found |= here;
                parts[i].getAccessor().setAccessible(true);
                values[i] = here ? value : parts[i].getAccessor().invoke(record);
            }
            if (!found) throw new IllegalArgumentException(record.getClass() + " has no " + component);
            Class<?>[] types =
                    Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new);
            Constructor<?> constructor = record.getClass().getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return (T) constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A copy of a list with the element at a place replaced. */
    public static <T> List<T> at(List<T> list, int place, T value) {
        List<T> copy = new ArrayList<>(list);
        copy.set(place, value);
        return List.copyOf(copy);
    }
}
