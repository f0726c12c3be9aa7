package rakeline.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rakeline.desk.Version;
import rakeline.figure.BikeDrawing;
import rakeline.handling.Ride;
import rakeline.handout.Block;
import rakeline.handout.PageSheet;
import rakeline.handout.Sheet;
import rakeline.prelude.Pictures;
import rakeline.quantity.Quantity;
import rakeline.study.Vocabulary;

/** A page of what keys mean: made from the declarations, so that it cannot say anything else. */
final class KeysSheet {
    private static final double TURNED_DEG = 15;

    private KeysSheet() {}

    static Sheet of(Vocabulary vocabulary, List<Quantity> quantities) {
        Map<String, List<Quantity>> groups = new LinkedHashMap<>();
        quantities.forEach(quantity -> groups.computeIfAbsent(group(vocabulary, quantity), any -> new ArrayList<>())
                .add(quantity));
        List<Block> blocks = new ArrayList<>(whole(Pictures.example()));
        groups.forEach((group, members) -> {
            blocks.add(new Block.Heading(2, group));
            blocks.add(new Block.Explained(members.stream()
                    .map(quantity -> PageSheet.entry(quantity, Pictures.ofKey(quantity.key())))
                    .toList()));
        });
        return new Sheet(
                "Inputs and measures",
                "What every key of files, commands, rows and figures means. Lengths are millimetres, angles degrees.",
                blocks,
                List.of("Rakeline " + Version.number()),
                Sheet.Form.PAGES);
    }

    private static List<Block> whole(Ride ride) {
        return List.of(
                new Block.Shown(BikeDrawing.sideView(List.of(ride))),
                new Block.Shown(BikeDrawing.planView(ride, TURNED_DEG)));
    }

    private static String group(Vocabulary vocabulary, Quantity quantity) {
        int dot = quantity.key().indexOf('.');
        boolean measured = vocabulary.measures().containsKey(quantity.key());
        return measured || dot < 0
                ? "Measures"
                : "Input, group " + quantity.key().substring(0, dot);
    }
}
