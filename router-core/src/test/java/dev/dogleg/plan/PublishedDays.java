package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;
import dev.dogleg.travel.TravelTimes;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.StringTokenizer;

/**
 * Published travelling-salesman days with windows, read from where they lie (see the page there).
 *
 * <p>Decimals of the file become whole numbers by a scale of 1, 10 or 10,000, so nothing is
 * rounded.
 */
final class PublishedDays {
  private PublishedDays() {}

  /** A matrix of constant times. */
  static final class Matrix implements TravelTimes {
    private final int[] seconds;
    private final int n;

    Matrix(int n, int[] seconds) {
      this.n = n;
      this.seconds = seconds;
    }

    @Override
    public int size() {
      return n;
    }

    @Override
    public boolean reaches(int from, int to) {
      return true;
    }

    @Override
    public int driveSeconds(int from, int to, int leave) {
      return seconds[from * n + to];
    }

    @Override
    public int steadyUntil(int from, int to, int leave) {
      return FOREVER;
    }

    @Override
    public int leastDriveSeconds(int from, int to) {
      return seconds[from * n + to];
    }

    @Override
    public int lengthMetres(int from, int to) {
      return 0;
    }
  }

  /** An instance: n places, its matrix, its windows, all scaled. */
  static final class Instance {
    final String set;
    final String name;
    final int scale;
    final Matrix matrix;
    final int[] open;
    final int[] close;

    Instance(String set, String name, int scale, Matrix matrix, int[] open, int[] close) {
      this.set = set;
      this.name = name;
      this.scale = scale;
      this.matrix = matrix;
      this.open = open;
      this.close = close;
    }

    /** Price of a driven unit: makes the cost of every set alike in size, whatever its decimals. */
    int price() {
      return Math.max(1, 1000 / scale);
    }

    /** The day that counts travel only, at {@link #price()}. */
    DayModel travelTime() {
      return model(close[0], price(), 0);
    }

    /** The day that counts the arrival back. */
    DayModel makespan(int latestEnd) {
      return model(latestEnd, 0, 1);
    }

    private DayModel model(int latestEnd, long drivePrice, long endPrice) {
      int n = matrix.size() - 1;
      int[] opens = new int[n];
      int[] closes = new int[n];
      for (int i = 0; i < n; i++) {
        opens[i] = open[i + 1];
        closes[i] = close[i + 1];
      }
      return DayModel.plain(matrix, opens, closes, 0, open[0], latestEnd, drivePrice, endPrice);
    }
  }

  static Instance read(Path file, String set, int scale) throws IOException {
    List<BigDecimal> numbers = new ArrayList<>();
    for (String line : Files.readAllLines(file)) {
      int comment = line.indexOf('#');
      StringTokenizer words = new StringTokenizer(comment < 0 ? line : line.substring(0, comment));
      while (words.hasMoreTokens()) {
        numbers.add(new BigDecimal(words.nextToken()));
      }
    }
    int n = numbers.get(0).intValueExact();
    int[] seconds = new int[n * n];
    for (int k = 0; k < n * n; k++) {
      seconds[k] = whole(numbers.get(1 + k), scale);
    }
    int[] open = new int[n];
    int[] close = new int[n];
    for (int i = 0; i < n; i++) {
      open[i] = whole(numbers.get(1 + n * n + 2 * i), scale);
      close[i] = whole(numbers.get(2 + n * n + 2 * i), scale);
    }
    return new Instance(
        set, file.getFileName().toString(), scale, new Matrix(n, seconds), open, close);
  }

  private static int whole(BigDecimal number, int scale) {
    return number.multiply(BigDecimal.valueOf(scale)).intValueExact();
  }

  /** A time-dependent day; its arrays are read by name from the JSON file. */
  static DayModel readTimeDependent(Path file) throws IOException {
    String text = Files.readString(file);
    double[][] distances = rows(text, "distances");
    int n = distances.length;
    double[][] clusterNumbers = rows(text, "clusters");
    int[][] clusters = new int[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        clusters[i][j] = Math.max(0, (int) clusterNumbers[i][j]);
      }
    }
    double[][] windows = rows(text, "time_windows");
    double[][] zones = rows(text, "speed_zones");
    double[] zoneEnds = new double[zones.length];
    for (int z = 0; z < zones.length; z++) {
      zoneEnds[z] = zones[z][1];
    }
    TdTravel travel = new TdTravel(distances, clusters, rows(text, "cluster_speeds"), zoneEnds);
    int[] open = new int[n - 2];
    int[] close = new int[n - 2];
    for (int i = 0; i < n - 2; i++) {
      open[i] = (int) Math.round(windows[i + 1][0] * TdTravel.UNIT);
      close[i] = (int) Math.round(windows[i + 1][1] * TdTravel.UNIT);
    }
    int latestEnd = (int) Math.round(windows[n - 1][1] * TdTravel.UNIT);
    return DayModel.plain(travel, open, close, n - 1, 0, latestEnd, 0, 1);
  }

  private static double[][] rows(String json, String name) {
    int at = json.indexOf("[[", json.indexOf("\"" + name + "\""));
    String[] rows = json.substring(at + 2, json.indexOf("]]", at)).split("\\],\\s*\\[");
    double[][] numbers = new double[rows.length][];
    for (int r = 0; r < rows.length; r++) {
      String[] words = rows[r].split(",");
      numbers[r] = new double[words.length];
      for (int k = 0; k < words.length; k++) {
        numbers[r][k] = Double.parseDouble(words[k].strip());
      }
    }
    return numbers;
  }
}
