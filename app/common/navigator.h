#pragma once
#include <QObject>

#include "core/base/id.h"
#include "core/procedure/sheet.h"

namespace cw {

/// How places send the user to one another: first the place comes to the front (and is made if it never was),
/// then it hears what is wanted of it.
class Navigator final : public QObject {
  Q_OBJECT

 public:
  using QObject::QObject;

  void openPlace(const QString& key) { emit placeWanted(key); }
  void openJob(const Id& job) { openPlace(QStringLiteral("bench")), emit jobWanted(job); }
  void openRecord(const Id& job) { openPlace(QStringLiteral("records")), emit recordWanted(job); }
  /// Figures, filled in from this specification of this fastener.
  void openFigures(const Specification& specification, const Fastener& fastener) {
    openPlace(QStringLiteral("figures"));
    emit figuresWanted(specification, fastener);
  }

  /// Figures, filled in from what the place in front has in hand, if it has anything.
  void openFiguresFrom(const QString& place) {
    openPlace(QStringLiteral("figures")), emit inHandWanted(place);
  }

 signals:
  void placeWanted(const QString& key);
  void jobWanted(const cw::Id& job);
  void recordWanted(const cw::Id& job);
  void inHandWanted(const QString& place);  ///< a place of this key answers by openFigures
  void figuresWanted(const cw::Specification& specification, const cw::Fastener& fastener);
};

}  // namespace cw
