#include "app/common/wording.h"

#include <QCoreApplication>

namespace cw {

QString toQt(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

std::string fromQt(const QString& text) {
  return text.toStdString();
}

QString worded(const Message& message) {
  const QString translated = QCoreApplication::translate("core", message.text.c_str());
  return toQt(fill(fromQt(translated), message.arguments));
}

std::string inWindow(const Message& message) {
  return fromQt(worded(message));
}

QString worded(const Error& error) {
  const QString problem = worded(error.problem);
  const QString capital = problem.left(1).toUpper() + problem.mid(1);
  if (error.expected.empty()) return capital + QLatin1Char('.');
  return capital + QLatin1String("; ") + worded(error.expected) + QLatin1Char('.');
}

QString wordedWithPlace(const Error& error) {
  return error.place.empty() ? worded(error) : toQt(error.place) + QLatin1String(": ") + worded(error);
}

QString worded(const Finding& finding) {
  QString out = worded(finding.problem);
  if (!finding.cure.empty()) out += QLatin1String("; ") + worded(finding.cure);
  return out + QLatin1Char('.');
}

}  // namespace cw
