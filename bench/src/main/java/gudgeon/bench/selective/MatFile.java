package gudgeon.bench.selective;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.InflaterInputStream;

/** Reads the plain numeric matrices of a MAT-file, level 5 (little-endian, compressed or not): enough for published data. */
final class MatFile {
    private static final int HEADER = 128;
    private static final int COMPRESSED = 15;
    private static final int MATRIX = 14;

    private MatFile() {}

    /** By name: rows of numbers. */
    static Map<String, double[][]> read(Path file) throws IOException {
        Map<String, double[][]> matrices = new LinkedHashMap<>();
        ByteBuffer data = little(Files.readAllBytes(file));
        data.position(HEADER);
        while (data.remaining() >= 8) {
            element(data, matrices);
        }
        return matrices;
    }

    private static ByteBuffer little(byte[] bytes) {
        return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static void element(ByteBuffer data, Map<String, double[][]> matrices) throws IOException {
        int type = data.getInt();
        int size = data.getInt();
        byte[] body = new byte[size];
        data.get(body);
        if (type == COMPRESSED) {
            element(little(new InflaterInputStream(new ByteArrayInputStream(body)).readAllBytes()), matrices);
        } else if (type == MATRIX) {
            matrix(little(body), matrices);
        }
        while (type != COMPRESSED && data.position() % 8 != 0 && data.hasRemaining()) {
            data.get();
        }
    }

    /** One part of a matrix: its number type and bytes; small ones share a word with their header. */
    private record Piece(int type, ByteBuffer bytes) {}

    private static Piece piece(ByteBuffer in) {
        int word = in.getInt();
        boolean small = word >>> 16 != 0;
        int type = small ? word & 0xFFFF : word;
        int size = small ? word >>> 16 : in.getInt();
        byte[] body = new byte[size];
        in.get(body);
        int padded = small ? 4 : (size + 7) / 8 * 8;
        in.position(Math.min(in.limit(), in.position() + padded - size));
        return new Piece(type, little(body));
    }

    private static void matrix(ByteBuffer in, Map<String, double[][]> matrices) {
        piece(in);
        Piece shape = piece(in);
        int rows = shape.bytes().getInt();
        int columns = shape.bytes().getInt();
        String name = StandardCharsets.US_ASCII.decode(piece(in).bytes()).toString();
        Piece values = piece(in);
        double[][] matrix = new double[rows][columns];
        for (int c = 0; c < columns; c++) {
            for (int r = 0; r < rows; r++) {
                matrix[r][c] = number(values);
            }
        }
        matrices.put(name, matrix);
    }

    private static double number(Piece piece) {
        ByteBuffer bytes = piece.bytes();
        return switch (piece.type()) {
            case 1 -> bytes.get();
            case 2 -> bytes.get() & 0xFF;
            case 3 -> bytes.getShort();
            case 4 -> bytes.getShort() & 0xFFFF;
            case 5 -> bytes.getInt();
            case 6 -> bytes.getInt() & 0xFFFFFFFFL;
            case 7 -> bytes.getFloat();
            case 9 -> bytes.getDouble();
            default -> throw new IllegalArgumentException("numbers of type " + piece.type() + " are not read");
        };
    }
}
