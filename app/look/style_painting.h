#pragma once
#include <QStyleOption>

class QPainter;

namespace cw {

// The strokes of WorkshopStyle: flat, in the palette's roles.

/// `main`: filled, the one action of its screen.
void drawButton(const QStyleOption* option, QPainter* painter, bool main);
void drawCheck(const QStyleOption* option, QPainter* painter);
void drawField(const QStyleOption* option, QPainter* painter);
/// A field with a chevron: there is more to choose from.
void drawChoice(const QStyleOption* option, QPainter* painter);
/// The ground of a list's heading: its words stand on the list's own ground, a line below.
void drawHeading(const QStyleOption* option, QPainter* painter);
/// The handle between two sides: a plain line.
void drawHandle(const QStyleOption* option, QPainter* painter);

/// A scroll bar without arrows, and where its slider lies.
QRect sliderOf(const QStyleOptionSlider& bar);
void drawScrollBar(const QStyleOptionSlider* option, QPainter* painter, const QRect& slider);

}  // namespace cw
