#pragma once
#include <QWidget>
#include <functional>
#include <vector>

#include "core/record/body.h"

class QVBoxLayout;

namespace cw {

/// What people call a field of an entry that a correction may change: "Batch, from the pack". Empty for a
/// field that has no words yet.
QString wordsForField(std::string_view key);

/// A field for each thing in an entry that a correction may change, filled with what stands there.
class EntryFields final : public QWidget {
  Q_OBJECT

 public:
  explicit EntryFields(QWidget* parent = nullptr);

  /// Fields for what the entry states now.
  void present(const Body& body);
  void clear();
  /// What was changed, by the names of the file, and nothing else; an empty object where nothing was.
  /// InvalidInput for a quantity that cannot be read, with the field's words as place.
  Result<Json> changed() const;

 private:
  class Builder;
  struct Field {
    std::string key;
    std::function<bool()> isChanged;
    std::function<Result<Json>()> typed;
  };

  QVBoxLayout* m_column;
  std::vector<Field> m_fields;
};

}  // namespace cw
