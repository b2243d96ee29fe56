package witnessmark.abuse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A disk as the acts of a log leave it. Content is safe once its file was synced, names once their folder was; whatever
 * came since may be there or not when the power goes. Folders themselves are taken for safe: journaling file systems
 * bring them to the disk with the first sync of what lies in them.
 */
final class SimulatedDisk {
    /** Which file an inode is now: the number of one that was removed is given again. */
    private final Map<Long, Long> files = new HashMap<>();

    private long filesSeen;
    private final Map<Long, byte[]> safe = new HashMap<>();
    private final Map<Long, List<DiskLog.Act>> unsynced = new LinkedHashMap<>();
    private final Map<String, Long> names = new TreeMap<>();
    private final Map<String, List<DiskLog.Act>> unsyncedNames = new LinkedHashMap<>();

    /** With what lies in a folder now. */
    static SimulatedDisk of(Path folder) throws IOException {
        SimulatedDisk disk = new SimulatedDisk();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                long inode = (Long) Files.getAttribute(file, "unix:ino");
                disk.names.put(file.toString(), disk.newFile(inode));
                disk.safe.put(disk.fileOf(inode), Files.readAllBytes(file));
            }
        }
        return disk;
    }

    private long newFile(long inode) {
        files.put(inode, ++filesSeen);
        return filesSeen;
    }

    private long fileOf(long inode) {
        return files.getOrDefault(inode, 0L);
    }

    void take(DiskLog.Act seen) {
        long file = seen.kind() == DiskLog.Kind.CREATE ? newFile(seen.file()) : fileOf(seen.file());
        DiskLog.Act act = new DiskLog.Act(seen.kind(), seen.name(), seen.data(), file, seen.offset());
        switch (act.kind()) {
            case WRITE, TRUNCATE ->
                unsynced.computeIfAbsent(act.file(), f -> new ArrayList<>()).add(act);
            case SYNC -> {
                // a new array each time: states found before still hold the one before
                byte[] content = safe.getOrDefault(act.file(), new byte[0]).clone();
                for (DiskLog.Act each : unsynced.getOrDefault(act.file(), List.of())) {
                    content = PowerCut.KEPT.with(content, each, new Random(0));
                }
                unsynced.remove(act.file());
                safe.put(act.file(), content);
            }
            case CREATE, RENAME, UNLINK ->
                unsyncedNames
                        .computeIfAbsent(folderOf(act.name()), f -> new ArrayList<>())
                        .add(act);
            case SYNC_FOLDER -> {
                for (DiskLog.Act each : unsyncedNames.getOrDefault(act.name(), List.of())) {
                    name(names, each);
                }
                unsyncedNames.remove(act.name());
            }
            case SAID, NONE -> {}
        }
    }

    /** What is found when the power comes back: path to content. */
    Map<String, byte[]> after(PowerCut cut, Random random) {
        Map<String, Long> left = new TreeMap<>(names);
        unsyncedNames.forEach((folder, acts) -> {
            int kept = cut.names(acts.size(), random);
            acts.subList(0, kept).forEach(act -> name(left, act));
        });
        Map<String, byte[]> found = new TreeMap<>();
        left.forEach((name, file) -> {
            byte[] content = safe.getOrDefault(file, new byte[0]);
            List<DiskLog.Act> pending = unsynced.getOrDefault(file, List.of());
            if (!pending.isEmpty()) {
                content = content.clone();
            }
            for (DiskLog.Act act : pending) {
                content = cut.with(content, act, random);
            }
            found.put(name, content);
        });
        return found;
    }

    private static void name(Map<String, Long> names, DiskLog.Act act) {
        switch (act.kind()) {
            case CREATE -> names.put(act.name(), act.file());
            case UNLINK -> names.remove(act.name());
            case RENAME -> {
                Long file = names.remove(act.name());
                if (file != null) {
                    names.put(act.text(), file);
                }
            }
            default -> throw new IllegalArgumentException(act.kind() + " is about no name");
        }
    }

    private static String folderOf(String path) {
        return path.substring(0, path.lastIndexOf('/'));
    }
}
