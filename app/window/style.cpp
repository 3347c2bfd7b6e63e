#include "app/window/style.h"

#include "app/widgets/shades.h"

#include <QApplication>
#include <QSettings>

namespace laneward {

QPalette readablePalette(QPalette palette) {
    for (auto group : {QPalette::Active, QPalette::Inactive, QPalette::Disabled}) {
        const QColor text = palette.color(group, QPalette::HighlightedText);
        palette.setColor(group, QPalette::Highlight, readable(palette.color(group, QPalette::Highlight), text, textContrast));
        const QColor ground = palette.color(group, QPalette::Base);
        const double ratio = group == QPalette::Disabled ? markContrast : textContrast;
        palette.setColor(group, QPalette::PlaceholderText,
                         readable(mixed(palette.color(group, QPalette::Text), ground, 0.35), ground, ratio));
    }
    return palette;
}

// A named base, not QApplication::style(): the proxy must not wrap itself when the size changes.
LanewardStyle::LanewardStyle(TargetSize size) : QProxyStyle(QStringLiteral("fusion")), m_least(int(size)) {}

void LanewardStyle::polish(QPalette& palette) {
    QProxyStyle::polish(palette);
    palette = readablePalette(palette);
}

int LanewardStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const {
    const int stock = QProxyStyle::pixelMetric(metric, option, widget);
    switch (metric) {
        case PM_IndicatorHeight:
        case PM_IndicatorWidth:
        case PM_ExclusiveIndicatorHeight:
        case PM_ExclusiveIndicatorWidth:
            return qMax(stock, m_least * 2 / 3);
        case PM_HeaderMargin:
        case PM_FocusFrameHMargin:
            return qMax(stock, 5);  // air between the columns of a list
        case PM_ScrollBarExtent:
            return qMax(stock, m_least * 2 / 3);
        default:
            return stock;
    }
}

QSize LanewardStyle::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                                      const QWidget* widget) const {
    QSize result = QProxyStyle::sizeFromContents(type, option, size, widget);
    switch (type) {
        case CT_PushButton:
        case CT_ToolButton:
        case CT_CheckBox:
        case CT_RadioButton:
        case CT_ComboBox:
        case CT_LineEdit:
        case CT_SpinBox:
        case CT_MenuItem:
        case CT_MenuBarItem:
        case CT_ItemViewItem:
        case CT_HeaderSection:
        case CT_TabBarTab:
            result.setHeight(qMax(result.height(), m_least));
            break;
        default:
            break;
    }
    return result;
}

void applyStyle(TargetSize size) { QApplication::setStyle(new LanewardStyle(size)); }

TargetSize keptTargetSize() { return QSettings().value("window/shop").toBool() ? TargetSize::Shop : TargetSize::Usual; }

void keepTargetSize(TargetSize size) { QSettings().setValue("window/shop", size == TargetSize::Shop); }

}  // namespace laneward
