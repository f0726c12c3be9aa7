package rakeline.figure;

import java.util.List;
import rakeline.handling.MassUsed;
import rakeline.handling.Mount;
import rakeline.quantity.Decimals;
import rakeline.quantity.Numbers;

/** The masses, centres and moments that a result rests on, each with where it comes from. */
public final class MassTable {
    private MassTable() {}

    public static Table of(String name, Mount mount) {
        List<MassUsed> used = mount.used();
        return new Table(
                name + ": masses taken; " + rider(mount),
                List.of(
                        Column.ofWords(
                                "key",
                                "Key",
                                used.stream().map(mass -> mass.quantity().key()).toList()),
                        new Column(
                                "value",
                                "Value",
                                "",
                                Numbers.generate(used.size(), i -> used.get(i).value()),
                                used.stream()
                                        .map(mass -> mass.quantity().format(mass.value()))
                                        .toList()),
                        Column.ofWords(
                                "unit",
                                "Unit",
                                used.stream()
                                        .map(mass -> mass.quantity().unit().symbol())
                                        .toList()),
                        Column.ofWords(
                                "from",
                                "From",
                                used.stream().map(MassUsed::origin).toList())),
                "",
                List.of());
    }

    /** Who is on it, in words. */
    public static String rider(Mount mount) {
        return mount.riderKg() == 0
                ? "without a rider, the bicycle alone"
                : "rider " + Decimals.fixed(mount.riderKg(), 1) + " kg, of which "
                        + Decimals.fixed(mount.armsOnBarKg(), 2) + " kg of forearms and hands move with the bar";
    }
}
