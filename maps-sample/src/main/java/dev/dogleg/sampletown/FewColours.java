package dev.dogleg.sampletown;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reduces a picture to its 256 most frequent colours, so that its file is small. */
final class FewColours {
  private static final int MOST = 256;
  private static final int COARSE = 0xf8f8f8;

  private FewColours() {}

  static BufferedImage of(BufferedImage picture) {
    int width = picture.getWidth();
    int height = picture.getHeight();
    int[] pixels = picture.getRGB(0, 0, width, height, null, 0, width);
    Map<Integer, Integer> counts = new HashMap<>();
    for (int pixel : pixels) {
      counts.merge(pixel & COARSE, 1, Integer::sum);
    }
    List<Integer> palette =
        counts.keySet().stream()
            .sorted((a, b) -> Integer.compare(counts.get(b), counts.get(a)))
            .limit(MOST)
            .toList();
    int[] colours = palette.stream().mapToInt(Integer::intValue).toArray();
    IndexColorModel model =
        new IndexColorModel(
            8, colours.length, colours, 0, false, -1, java.awt.image.DataBuffer.TYPE_BYTE);
    BufferedImage few = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_INDEXED, model);
    Map<Integer, Integer> nearest = new HashMap<>();
    int[] row = new int[width];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        row[x] = nearest.computeIfAbsent(pixels[y * width + x] & COARSE, c -> nearest(colours, c));
      }
      few.getRaster().setPixels(0, y, width, 1, row);
    }
    return few;
  }

  private static int nearest(int[] colours, int colour) {
    int best = 0;
    int bestDistance = Integer.MAX_VALUE;
    for (int i = 0; i < colours.length; i++) {
      int distance = 0;
      for (int shift = 0; shift <= 16; shift += 8) {
        int difference = (colours[i] >> shift & 0xff) - (colour >> shift & 0xff);
        distance += difference * difference;
      }
      if (distance < bestDistance) {
        bestDistance = distance;
        best = i;
      }
    }
    return best;
  }
}
