package thwartwise.picture;

import java.util.function.Consumer;

/**
 * One view of the boat, to be drawn on any canvas.
 *
 * @param height in units of the {@link Canvas}
 */
record View(PictureFacts facts, double height, Consumer<Canvas> drawing) {

  Picture picture() {
    Svg svg = new Svg(height);
    drawing.accept(svg);
    return new Picture(facts, svg.whole());
  }

  /** The view in letters, no wider than the columns. */
  String letters(int columns) {
    LetterGrid grid = new LetterGrid(height, columns);
    drawing.accept(grid);
    return grid.whole();
  }
}
