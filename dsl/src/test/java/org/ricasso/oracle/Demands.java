package org.ricasso.oracle;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is asked of the knife must be made by a step and measured after the last step that changes it or may change it (rules of
 * the reference for release, R27, R64, R66, taken together: a record of each characteristic, made after all that can spoil it).
 */
final class Demands {
    /** What of the spec is which property of the piece, and of which part. */
    static final Map<String, String> CHARACTERISTICS = new LinkedHashMap<>();

    static {
        List.of("blade.hardness hardness", "blade.length length", "blade.height height", "blade.spine spine", "blade.finish surface",
                "blade.roughness roughness", "blade.straightness straightness", "blade.scallops.depth scallop-depth",
                "blade.edge.each-side edge-angle", "blade.edge.behind edge-thickness", "blade.edge.serrations.pitch tooth-pitch",
                "blade.edge.serrations.depth tooth-depth", "bolster.length bolster-length", "handle.rivets.grip grip",
                "handle.scales.thickness thickness", "handle.scales.counterbore counterbore", "handle.length handle-length",
                "handle.width width", "handle.roughness handle-roughness", "mark.method mark")
                .forEach(line -> CHARACTERISTICS.put(line.split(" ")[0], line.split(" ")[1]));
    }

    private Demands() {}

    /** The property that a step measures under a name: that of the part it works. */
    static String property(String part, String measured) {
        return part.equals("handle") && List.of("length", "roughness").contains(measured) ? "handle-" + measured : measured;
    }

    static void judge(Reading reading) {
        List<Job.Step> steps = reading.job.steps();
        for (Map.Entry<String, String> asked : CHARACTERISTICS.entrySet()) {
            if (!reading.job.spec().containsKey(asked.getKey())) {
                continue;
            }
            int made = -1;
            int changed = -1;
            int measured = -1;
            for (int i = 0; i < steps.size(); i++) {
                States.Operation operation = reading.operation(i);
                made = operation.makes().contains(asked.getValue()) ? i : made;
                changed = operation.changes(asked.getValue()) ? i : changed;
                for (String name : steps.get(i).measures().keySet()) {
                    measured = property(operation.part(), name).equals(asked.getValue()) ? i : measured;
                }
            }
            if (made < 0) {
                reading.add("made", -1, asked.getKey(), "no step makes it");
            } else if (measured < 0) {
                reading.add("measured", -1, asked.getKey(), "no step measures it");
            } else if (measured < changed) {
                reading.add("measured", measured, asked.getKey(), "measured before " + steps.get(changed).operation() + " can change it");
            }
        }
    }
}
