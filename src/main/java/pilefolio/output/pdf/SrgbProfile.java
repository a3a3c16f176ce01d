package pilefolio.output.pdf;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * A colour profile that says what the red, green and blue values mean: primaries and white point of
 * IEC 61966-2-1 adapted to D50, and its tone curve, in the file form of ICC.1:2001 (version 2).
 * Made here so that the bytes are the same on every platform.
 */
final class SrgbProfile {
  private static final int CURVE_POINTS = 1024;

  private SrgbProfile() {}

  static byte[] bytes() {
    byte[][] tags = {
      description("sRGB"),
      text("No rights reserved"),
      xyz(0.9642, 1.0, 0.8249),
      xyz(0.4360, 0.2225, 0.0139),
      xyz(0.3851, 0.7169, 0.0971),
      xyz(0.1431, 0.0606, 0.7141),
      curve()
    };
    String[] names = {"desc", "cprt", "wtpt", "rXYZ", "gXYZ", "bXYZ", "rTRC", "gTRC", "bTRC"};
    int tableSize = 4 + names.length * 12;
    int[] offsets = new int[tags.length];
    int at = 128 + tableSize;
    for (int i = 0; i < tags.length; i++) {
      offsets[i] = at;
      at += (tags[i].length + 3) / 4 * 4;
    }
    ByteBuffer out = ByteBuffer.allocate(at);
    header(out, at);
    out.putInt(names.length);
    for (int i = 0; i < names.length; i++) {
      int tag = Math.min(i, tags.length - 1);
      out.put(ascii(names[i])).putInt(offsets[tag]).putInt(tags[tag].length);
    }
    for (int i = 0; i < tags.length; i++) {
      out.position(offsets[i]);
      out.put(tags[i]);
    }
    return out.array();
  }

  private static void header(ByteBuffer out, int size) {
    out.putInt(size);
    out.putInt(0);
    out.putInt(0x02400000);
    out.put(ascii("mntrRGB XYZ "));
    for (int part : new int[] {2026, 1, 1, 0, 0, 0}) {
      out.putShort((short) part);
    }
    out.put(ascii("acsp"));
    out.position(68);
    out.putInt(fixed(0.9642)).putInt(fixed(1.0)).putInt(fixed(0.8249));
    out.position(128);
  }

  private static byte[] description(String name) {
    ByteBuffer out = ByteBuffer.allocate(12 + name.length() + 1 + 4 + 4 + 2 + 1 + 67);
    out.put(ascii("desc")).putInt(0).putInt(name.length() + 1).put(ascii(name));
    return out.array();
  }

  private static byte[] text(String words) {
    ByteBuffer out = ByteBuffer.allocate(8 + words.length() + 1);
    out.put(ascii("text")).putInt(0).put(ascii(words));
    return out.array();
  }

  private static byte[] xyz(double x, double y, double z) {
    ByteBuffer out = ByteBuffer.allocate(20);
    out.put(ascii("XYZ ")).putInt(0).putInt(fixed(x)).putInt(fixed(y)).putInt(fixed(z));
    return out.array();
  }

  private static byte[] curve() {
    ByteBuffer out = ByteBuffer.allocate(12 + 2 * CURVE_POINTS);
    out.put(ascii("curv")).putInt(0).putInt(CURVE_POINTS);
    for (int i = 0; i < CURVE_POINTS; i++) {
      double v = i / (CURVE_POINTS - 1.0);
      // StrictMath: the same bits on every machine.
      double linear = v <= 0.04045 ? v / 12.92 : StrictMath.pow((v + 0.055) / 1.055, 2.4);
      out.putShort((short) Math.round(linear * 65535));
    }
    return out.array();
  }

  private static int fixed(double value) {
    return (int) Math.round(value * 65536);
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
