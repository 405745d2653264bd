namespace Loadmark.Web.Metering;

/// <summary>One value that the meter at the bench read.</summary>
/// <param name="Quantity">What was measured.</param>
/// <param name="Value">The value, in volts or amperes.</param>
/// <param name="Text">The value as the meter sent it, with all its digits.</param>
/// <param name="Instrument">What the meter says it is.</param>
/// <param name="When">When it was read.</param>
public sealed record MeterReading(MeterQuantity Quantity, decimal Value, string Text, string Instrument, DateTimeOffset When);
