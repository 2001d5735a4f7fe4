package gudgeon.app.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PanelPackingTest {
    @Test
    void panelsNeverOverlapAndKeepToTheSheet() {
        for (long seed = 1; seed <= 50; seed++) {
            Random random = new Random(seed);
            List<PanelPacking.Size> sizes = new ArrayList<>();
            for (int i = 0; i < 1 + random.nextInt(20); i++) {
                sizes.add(new PanelPacking.Size(50 + random.nextInt(400), 50 + random.nextInt(400)));
            }
            List<PanelPacking.Slot> slots = PanelPacking.pack(sizes, 1000);
            assertThat(slots).hasSameSizeAs(sizes);
            for (int i = 0; i < slots.size(); i++) {
                PanelPacking.Slot a = slots.get(i);
                assertThat(a.size()).isEqualTo(sizes.get(i));
                assertThat(a.right()).as("seed " + seed).isLessThanOrEqualTo(1000);
                for (PanelPacking.Slot b : slots.subList(i + 1, slots.size())) {
                    boolean apart =
                            a.right() <= b.x() || b.right() <= a.x() || a.bottom() <= b.y() || b.bottom() <= a.y();
                    assertThat(apart).as("seed " + seed).isTrue();
                }
            }
        }
    }
}
