package witnessmark.exchange;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Ways to spoil or rewrite a season folder, each knowing what it is made of. */
enum Mutation {
    // what changes the bytes and not the meaning
    COLUMNS_IN_ANOTHER_ORDER(true) {
        @Override
        void apply(SeasonText season, String file, Random random) {
            season.grid(file, grid -> {
                List<Integer> order = new ArrayList<>();
                for (int i = 0; i < grid.rows().get(0).size(); i++) {
                    order.add(i);
                }
                Collections.shuffle(order, random);
                grid.rows()
                        .replaceAll(row ->
                                new ArrayList<>(order.stream().map(row::get).toList()));
            });
        }
    },
    ROWS_IN_ANOTHER_ORDER(true) {
        @Override
        void apply(SeasonText season, String file, Random random) {
            season.grid(
                    file,
                    grid -> Collections.shuffle(
                            grid.rows().subList(1, grid.rows().size()), random));
        }
    },
    QUOTED_WITH_OTHER_LINE_ENDS(true) {
        @Override
        void apply(SeasonText season, String file, Random random) {
            String end = List.of("\n", "\r\n", "\r").get(random.nextInt(3));
            season.text(file, Grid.parse(season.text(file)).text(true, end));
        }
    },
    BYTE_ORDER_MARK(true) {
        @Override
        void apply(SeasonText season, String file, Random random) {
            season.text(file, "\uFEFF" + season.text(file));
        }
    },
    EMPTY_LINES(true) {
        @Override
        void apply(SeasonText season, String file, Random random) {
            season.grid(file, grid -> {
                List<String> empty = new ArrayList<>(Collections.nCopies(1 + random.nextInt(3), ""));
                grid.rows().add(1 + random.nextInt(grid.rows().size()), empty);
            });
        }
    },
    // what drops or spoils something
    BYTE_CHANGED(false) {
        @Override
        void apply(SeasonText season, String file, Random random) {
            byte[] bytes = season.files().get(file).clone();
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            season.bytes(file, bytes);
        }
    },
    BYTES_TAKEN_OUT(false) {
        @Override
        void apply(SeasonText season, String file, Random random) {
            byte[] bytes = season.files().get(file);
            int from = random.nextInt(bytes.length);
            int to = from + 1 + random.nextInt(Math.min(200, bytes.length - from));
            byte[] left = Arrays.copyOf(bytes, bytes.length - (to - from));
            System.arraycopy(bytes, to, left, from, bytes.length - to);
            season.bytes(file, left);
        }
    },
    CUT_SHORT(false) {
        @Override
        void apply(SeasonText season, String file, Random random) {
            byte[] bytes = season.files().get(file);
            season.bytes(file, Arrays.copyOf(bytes, random.nextInt(bytes.length)));
        }
    },
    BYTES_FROM_ANOTHER_PLACE(false) {
        @Override
        void apply(SeasonText season, String file, Random random) {
            String text = season.text(file);
            List<String> others = List.copyOf(season.files().keySet());
            String other = season.text(others.get(random.nextInt(others.size())));
            int from = other.isEmpty() ? 0 : random.nextInt(other.length());
            String piece = other.substring(from, Math.min(other.length(), from + random.nextInt(300)));
            int at = random.nextInt(text.length());
            season.text(file, text.substring(0, at) + piece + text.substring(at));
        }
    },
    FIELD_REPLACED(false) {
        @Override
        void apply(SeasonText season, String file, Random random) {
            season.grid(file, grid -> {
                List<String> row = grid.rows().get(random.nextInt(grid.rows().size()));
                row.set(random.nextInt(row.size()), ODD.get(random.nextInt(ODD.size())));
            });
        }
    },
    FIELDS_EXCHANGED(false) {
        @Override
        void apply(SeasonText season, String file, Random random) {
            season.grid(file, grid -> {
                List<String> row = grid.rows().get(random.nextInt(grid.rows().size()));
                Collections.swap(row, random.nextInt(row.size()), random.nextInt(row.size()));
            });
        }
    },
    ROW_TAKEN_OUT(false) {
        @Override
        void apply(SeasonText season, String file, Random random) {
            season.grid(
                    file, grid -> grid.rows().remove(random.nextInt(grid.rows().size())));
        }
    },
    ROW_TWICE(false) {
        @Override
        void apply(SeasonText season, String file, Random random) {
            season.grid(
                    file,
                    grid -> grid.rows()
                            .add(new ArrayList<>(
                                    grid.rows().get(random.nextInt(grid.rows().size())))));
        }
    },
    COLUMN_TAKEN_OUT(false) {
        @Override
        void apply(SeasonText season, String file, Random random) {
            season.grid(file, grid -> {
                int at = random.nextInt(grid.rows().get(0).size());
                grid.rows().forEach(row -> row.remove(at));
            });
        }
    },
    FIELD_TAKEN_OUT(false) {
        @Override
        void apply(SeasonText season, String file, Random random) {
            season.grid(file, grid -> {
                List<String> row = grid.rows().get(random.nextInt(grid.rows().size()));
                row.remove(random.nextInt(row.size()));
            });
        }
    },
    QUOTE_PUT_IN(false) {
        @Override
        void apply(SeasonText season, String file, Random random) {
            String text = season.text(file);
            int at = random.nextInt(text.length());
            season.text(file, text.substring(0, at) + '"' + text.substring(at));
        }
    },
    ANOTHER_ENCODING(false) {
        @Override
        void apply(SeasonText season, String file, Random random) {
            season.bytes(
                    file,
                    season.text(file)
                            .getBytes(random.nextBoolean() ? StandardCharsets.UTF_16 : StandardCharsets.UTF_16LE));
        }
    },
    FILE_TAKEN_OUT(false) {
        @Override
        void apply(SeasonText season, String file, Random random) {
            season.without(file);
        }
    },
    FILES_EXCHANGED(false) {
        @Override
        void apply(SeasonText season, String file, Random random) {
            List<String> others = List.copyOf(season.files().keySet());
            String other = others.get(random.nextInt(others.size()));
            byte[] bytes = season.files().get(file);
            season.bytes(file, season.files().get(other)).bytes(other, bytes);
        }
    },
    FILE_EMPTIED(false) {
        @Override
        void apply(SeasonText season, String file, Random random) {
            season.bytes(file, new byte[0]);
        }
    };

    private static final List<String> ODD = List.of(
            "",
            "0",
            "-1",
            "1e400",
            "NaN",
            "9223372036854775808",
            "2026-02-30",
            "2026-01-28",
            "yes",
            "in force",
            "struck out",
            "K05",
            "/",
            "'; drop table run; --",
            "=cmd",
            "\u0000",
            "\uFFFD",
            " ",
            "a\nb",
            "01976c2e-0000-7000-8000-000000000011",
            "00000000-0000-0000-0000-000000000000",
            "x".repeat(2_000),
            "9".repeat(5_000));

    private final boolean keepsMeaning;

    Mutation(boolean keepsMeaning) {
        this.keepsMeaning = keepsMeaning;
    }

    boolean keepsMeaning() {
        return keepsMeaning;
    }

    /** Changes one file of a folder. */
    abstract void apply(SeasonText season, String file, Random random);
}
