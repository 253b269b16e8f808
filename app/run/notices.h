#pragma once
#include <QWidget>

#include "core/procedure/sheet.h"

class QVBoxLayout;

namespace cw {

/// A sheet's words, its torques said in the unit of the wrench in hand too; nullptr: none is in hand.
QString withUnitInHand(const std::string& text, const TorqueUnit* inHand);

/// Warnings, cautions and notes of a step, each with its word written out. With a wrench in hand their
/// torques are said in its unit too.
class Notices final : public QWidget {
  Q_OBJECT
 public:
  explicit Notices(QWidget* parent = nullptr);
  void present(const Step& step, const TorqueUnit* inHand);
  void clear();

 private:
  void add(const QString& word, const std::vector<std::string>& texts, QPalette::ColorRole ground,
           QPalette::ColorRole ink);
  const TorqueUnit* m_inHand = nullptr;
  QVBoxLayout* m_column;
};

}  // namespace cw
