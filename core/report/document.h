#pragma once
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/report/drawing.h"

namespace cw {

// What a printed or shown document is made of, in order and without a look.

/// Lead: what the document comes to. Headline: to be read across a room.
enum class Tone { Plain, Strong, Quiet, Caution, Lead, Headline, Warning };

struct Paragraph {
  std::string text;
  Tone tone = Tone::Plain;
};

struct Fact {
  std::string label, value;
};
struct Facts {
  std::vector<Fact> rows;
};

/// Where a value lies between two limits: 0 at the low one, 1 at the high one; outside them beyond.
struct Gauge {
  double value = 0;
  bool isReading = false;  ///< else the tool's setting
};

/// Overtaken text is paler, corrected text is struck through; both stay legible.
enum class Ink { Full, Pale, Struck };

struct Cell {
  std::string text;
  Ink ink = Ink::Full;
  std::string note{};  ///< after the text, never struck: where to read on
  std::optional<Gauge> gauge{};
};
struct Column {
  std::string heading;
  double width = 1;  ///< share of the table's width, against the others
  bool numeric = false;
};
struct Table {
  std::vector<Column> columns;
  std::vector<std::vector<Cell>> rows;
  bool forHandwriting = false;  ///< empty cells are boxes, tall enough to write in
};

using Block = std::variant<Paragraph, Facts, Table, JointDrawing>;

struct Section {
  std::string heading;
  std::vector<Block> blocks;
  bool newPage = false;
};

/// What stands across every page of a document that must not be taken for sound.
struct Stamp {
  std::string words;   ///< "This record does not verify"; empty for a document that is sound
  std::string reason;  ///< "entry 8: …"
};

struct Document {
  std::string title, subtitle;
  std::string notice;               ///< stands on every page; may be empty
  std::vector<std::string> footer;  ///< stands on every page
  std::vector<Section> sections;
  Stamp stamp{};
};

/// The document for a terminal: no line is cut, columns line up, what no longer holds stands between ~~ ~~.
/// A stamp stands before it and behind it.
std::vector<std::string> lines(const Document& document);

}  // namespace cw
