#include "app/common/settings.h"
#include "app/common/workspace.h"
#include "app/figures/figure.h"

namespace cw {

Result<const Catalogue*> FigureDesk::catalogue() const {
  return m_workspace.catalogue();
}

QString FigureDesk::valueOf(const QString& input) const {
  return Settings().figureInput(input);
}

void FigureDesk::setValue(const QString& input, const QString& text) {
  if (text == valueOf(input)) return;
  Settings().setFigureInput(input, text);
  emit valueChanged(input, text);
}

void FigureDesk::carry(const QString& figure, const std::map<QString, QString>& values) {
  for (const auto& [input, text] : values) setValue(input, text);
  emit figureWanted(figure);
}

}  // namespace cw
