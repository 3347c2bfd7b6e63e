// What the stock style lacks, mended once and for every widget: selected text with enough contrast, edges that can be seen,
// targets that are high enough.
//
// Limits: WCAG 2.2, success criteria 1.4.3 (4.5:1 for text), 1.4.11 (3:1 for edges) and 2.5.8 (targets of 24 px); 44 px (2.5.5)
// in the shop setting, for greasy hands on a touch screen.
#pragma once

#include <QPalette>
#include <QProxyStyle>

namespace laneward {

enum class TargetSize { Usual = 24, Shop = 44 };

/// Highlight colours moved until the selected text on them reads with 4.5:1, in every state of the window.
QPalette readablePalette(QPalette palette);

class LanewardStyle : public QProxyStyle {
    Q_OBJECT

public:
    explicit LanewardStyle(TargetSize size);

    using QProxyStyle::polish;
    void polish(QPalette& palette) override;
    int pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const override;
    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                            const QWidget* widget) const override;
    QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                           const QWidget* widget) const override;

private:
    int m_least;
};

/// Puts the style in place for the whole program.
void applyStyle(TargetSize size);
TargetSize keptTargetSize();  ///< as chosen last time
void keepTargetSize(TargetSize size);

}  // namespace laneward
