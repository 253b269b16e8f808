#pragma once
#include <QWidget>

#include "core/procedure/sheet.h"

class QVBoxLayout;

namespace cw {

/// Warnings, cautions and notes of a step, each with its word written out.
class Notices final : public QWidget {
  Q_OBJECT
 public:
  explicit Notices(QWidget* parent = nullptr);
  void present(const Step& step);
  void clear();

 private:
  void add(const QString& word, const std::vector<std::string>& texts, QPalette::ColorRole ground,
           QPalette::ColorRole ink);
  QVBoxLayout* m_column;
};

}  // namespace cw
