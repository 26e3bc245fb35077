package stretchwright.print.cards;

import java.util.List;
import stretchwright.ground.Document;
import stretchwright.print.kit.Paper;

/** The papers to test a cloth with, at true scale: one for home, one for the shop. */
public final class ClothCards {
    private ClothCards() {}

    public static List<Document> of(Paper sheet, ShopNeeds needs) {
        return List.of(ClothCard.of(sheet), ShopCard.of(sheet, needs));
    }
}
