#pragma once
#include <QWidget>

#include "app/run/stage_panel.h"

class QLabel;

namespace cw {

/// What my hand holds: position, the setting as the hero, the wrench. Nothing where no wrench is wanted.
class HandPanel final : public QWidget {
  Q_OBJECT
 public:
  explicit HandPanel(QWidget* parent = nullptr);
  void present(const BenchView& view);
  void clear();
  bool isEmpty() const;

 private:
  void fill(const BenchView& view);
  void showTool(const TorqueTool& tool, const StatedTorque& setting, const Moment& today);
  void showOthers(const BenchView& view, const ToolSet& own);

  QLabel *m_positionName, *m_position, *m_settingName, *m_setting, *m_unit, *m_words, *m_stated, *m_direction,
      *m_tool, *m_others;
};

}  // namespace cw
