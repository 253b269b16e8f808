#include "app/common/document_view.h"

#include <gmock/gmock.h>

#include <QTextBlock>
#include <QTextTable>

#include "app/common/colours.h"
#include "app/common/wording.h"
#include "tests/app/look.h"
#include "tests/support/sample_job.h"

namespace cw {
namespace {

Document oneTable() {
  Document out;
  out.title = "WO 1";
  Table table{{{"No.", 1, true}, {"What", 5}}, {}};
  table.rows.push_back({{"1"}, {"stands"}});
  table.rows.push_back({{"2"}, {"corrected", Ink::Struck}});
  out.sections.push_back({"Entries", {std::move(table)}, false});
  return out;
}

QTextCursor found(const DocumentView& view, const char* text) {
  return view.document()->find(QLatin1String(text));
}

TEST(DocumentView, StrikesThroughWhatWasCorrected) {
  DocumentView view;
  view.present(oneTable());
  EXPECT_FALSE(found(view, "stands").charFormat().fontStrikeOut());
  EXPECT_TRUE(found(view, "corrected").charFormat().fontStrikeOut());
}

TEST(DocumentView, SetsNumbersToTheRight) {
  DocumentView view;
  view.present(oneTable());
  EXPECT_EQ(found(view, "2").blockFormat().alignment(), Qt::AlignRight);
  EXPECT_NE(found(view, "corrected").blockFormat().alignment(), Qt::AlignRight);
}

TEST(DocumentView, FollowsAChangeOfPalette) {
  DocumentView view;
  view.setPalette(paletteOf(Scheme::Light));
  view.present(oneTable());
  view.setPalette(paletteOf(Scheme::Dark));
  EXPECT_EQ(found(view, "stands").charFormat().foreground().color(), inkOf(paletteOf(Scheme::Dark)));
}

TEST(DocumentView, DrawsAJoint) {
  Document with = oneTable();
  DocumentView view;
  view.resize(600, 900);
  view.show();
  view.present(with);
  const qreal without = view.document()->size().height();
  with.sections.front().blocks.push_back(drawingOf(test::sampleSheet().joints.front()));
  view.present(with);
  EXPECT_GT(view.document()->size().height(), without + 200);
}

TEST(DocumentView, ReplacesTheDocumentBefore) {
  DocumentView view;
  view.present(oneTable());
  Document other;
  other.title = "WO 2";
  view.present(other);
  EXPECT_EQ(view.toPlainText().trimmed(), QStringLiteral("WO 2"));
}

}  // namespace
}  // namespace cw
