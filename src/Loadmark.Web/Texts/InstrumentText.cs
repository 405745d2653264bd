using System.Globalization;
using Loadmark.Core.Acceptance;
using Loadmark.Web.Metering;

namespace Loadmark.Web.Texts;

/// <summary>What an instrument read, as it would be typed from a display.</summary>
internal static class InstrumentText
{
    /// <summary>
    /// The text: with its sign, in volts or amperes. What an instrument sends does not tell the last digit of its display; where its
    /// accuracy counts digits they are taken as coarse as of a meter of 2000 counts, 10 mV and 1 mA, so that the band is rather too wide.
    /// </summary>
    /// <param name="reading">What was read.</param>
    /// <param name="session">Who measures, with the meter's accuracy.</param>
    public static string Of(MeterReading reading, BenchSession session)
    {
        var isVolts = reading.Quantity == MeterQuantity.Volts;
        var countsDigits = (isVolts ? session.VoltsAccuracy?.Digits : session.AmpsAccuracy?.Digits) is not 0;
        var format = !countsDigits ? "0.00####" : isVolts ? "0.00" : "0.000";
        var size = Math.Abs(reading.Value).ToString(format, CultureInfo.InvariantCulture);
        return isVolts ? $"{(reading.Value < 0 ? "-" : "+")}{size} V" : $"{size} A";
    }
}
