// SPDX-License-Identifier: Apache-2.0
package hotside.page;

/**
 * A chart in a frame that takes the keyboard: pointer and arrow keys move its cursor or its present
 * point.
 */
final class LivingChart {
    private LivingChart() {}

    /** A figure of a lesson: chart, what the cursor reads, data table. */
    static String figure(String id, ChartData data) {
        return "<figure class=\"chart\">"
                + frame(id, data)
                + "<p class=\"reading\" role=\"status\""
                + Html.attribute("id", id + "-reading")
                + ">"
                + Xml.escape(Words.of("chart.hint"))
                + "</p>"
                + ChartTable.html(data)
                + "</figure>";
    }

    /** A chart whose present point the reader moves. */
    static String frame(String id, ChartData data) {
        return "<div class=\"chart-frame\" tabindex=\"0\" role=\"group\" data-chart=\"\""
                + Html.attribute("id", id + "-svg")
                + Html.attribute("data-part", id)
                + Html.attribute("aria-label", Words.of("chart.keys", Chart.summary(data)))
                + ">"
                + Chart.svg(data)
                + "</div>";
    }
}
