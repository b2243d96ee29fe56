package witnessmark.desktop.traceview;

/** What a channel did in what is seen: its name with its unit, least, most and mean as they read. */
record FigureLine(String channel, String least, String most, String mean) {}
