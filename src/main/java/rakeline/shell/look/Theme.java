package rakeline.shell.look;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.swing.UIManager;
import net.miginfocom.layout.PlatformDefaults;
import net.miginfocom.layout.UnitValue;

/** Puts a look in force for every widget: its colours and type as FlatLaf properties. */
public final class Theme {
    private Theme() {}

    public static void install(Look look) {
        PlatformDefaults.setDefaultHorizontalUnit(UnitValue.PIXEL);
        PlatformDefaults.setDefaultVerticalUnit(UnitValue.PIXEL);
        FlatLaf.setGlobalExtraDefaults(properties(look));
        if (look.dark()) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        UIManager.put("defaultFont", look.body());
    }

    private static Map<String, String> properties(Look look) {
        Map<String, String> all = new LinkedHashMap<>(colours(look));
        all.putAll(shapes());
        return all;
    }

    private static Map<String, String> colours(Look look) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("@background", Look.hex(look.paper()));
        all.put("@foreground", Look.hex(look.ink()));
        all.put("@accentColor", Look.hex(look.accent()));
        all.put("@componentBackground", Look.hex(look.card()));
        all.put("@menuBackground", Look.hex(look.card()));
        all.put("@disabledForeground", Look.hex(look.soft()));
        all.put("@selectionBackground", Look.hex(look.accent()));
        all.put("@selectionForeground", Look.hex(look.card()));
        all.put("Component.borderColor", Look.hex(look.edge()));
        all.put("Component.disabledBorderColor", Look.hex(look.hairline()));
        all.put("Component.focusColor", Look.hex(look.accent()));
        all.put("Component.focusedBorderColor", Look.hex(look.accent()));
        all.put("Button.borderColor", Look.hex(look.edge()));
        all.put("Button.disabledBorderColor", Look.hex(look.hairline()));
        all.put("Button.background", Look.hex(look.card()));
        all.put("Button.hoverBorderColor", Look.hex(look.ink()));
        all.put("ToggleButton.selectedBackground", Look.hex(look.accent()));
        all.put("ToggleButton.selectedForeground", Look.hex(look.card()));
        all.put("ToggleButton.tab.underlineColor", Look.hex(look.accent()));
        all.put("MenuBar.borderColor", Look.hex(look.hairline()));
        all.put("PopupMenu.borderColor", Look.hex(look.hairline()));
        all.put("ToolTip.background", Look.hex(look.card()));
        all.put("ToolTip.foreground", Look.hex(look.ink()));
        all.put("Slider.trackColor", Look.hex(look.edge()));
        all.put("Slider.trackValueColor", Look.hex(look.accent()));
        all.put("Slider.focusedColor", Look.hex(look.accent()));
        all.put("Slider.thumbColor", Look.hex(look.card()));
        all.put("Slider.thumbBorderColor", Look.hex(look.accent()));
        all.put("ScrollBar.thumb", Look.hex(look.edge()));
        all.put("ScrollBar.hoverThumbColor", Look.hex(look.soft()));
        all.put("ScrollBar.pressedThumbColor", Look.hex(look.soft()));
        all.put("ScrollBar.track", Look.hex(look.paper()));
        all.put("MenuItem.acceleratorForeground", Look.hex(look.soft()));
        return all;
    }

    /** Lengths at scale 1: these grow with the size of the type by themselves. */
    private static Map<String, String> shapes() {
        Map<String, String> all = new LinkedHashMap<>();
        for (String kind :
                new String[] {"Button", "Component", "TextComponent", "CheckBox", "PopupMenu", "ScrollBar"}) {
            all.put(kind + ".arc", "4");
        }
        all.put("Button.innerFocusWidth", "0");
        all.put("Component.focusWidth", "1");
        all.put("Component.innerFocusWidth", "0");
        all.put("Button.margin", "3,10,3,10");
        all.put("Button.default.boldText", "false");
        all.put("ScrollBar.width", "10");
        all.put("ScrollBar.showButtons", "false");
        all.put("ScrollBar.thumbArc", "4");
        all.put("ScrollBar.thumbInsets", "2,2,2,2");
        all.put("Slider.thumbSize", "13,13");
        all.put("Slider.trackWidth", "3");
        all.put("Slider.focusWidth", "3");
        all.put("SplitPaneDivider.style", "plain");
        all.put("Popup.dropShadowPainted", "false");
        return all;
    }
}
