package rakeline.study.fit;

import rakeline.geometry.parts.Category;
import rakeline.geometry.parts.Stock;

/** Numbers the combinations of a stock by their parts' numbers, in the order of the keys. */
record Order(long stacks, long stems, long cranks, long forks, long posts, long tyres) {
    static Order of(Stock stock) {
        return new Order(
                size(stock, Category.COVERS) * size(stock, Category.SPACERS),
                size(stock, Category.STEMS),
                size(stock, Category.CRANKS),
                size(stock, Category.FORKS),
                size(stock, Category.POSTS),
                size(stock, Category.TYRES));
    }

    long of(Mount.Bar bar, Mount.Stack stack, Mount.Stem stem, Mount.Foot foot, int fork, Mount.Seat seat, int tyre) {
        long place = bar.order();
        place = place * stacks + stack.order();
        place = place * stems + stem.order();
        place = place * cranks + foot.order();
        place = place * forks + fork;
        place = place * posts + seat.order();
        return place * tyres + tyre;
    }

    private static long size(Stock stock, Category category) {
        return stock.choices(category).size();
    }
}
