namespace Loadmark.Tests;

/// <summary>Noon of one day, or some minutes after.</summary>
internal sealed class FixedClock(int minutes = 0) : TimeProvider
{
    public override DateTimeOffset GetUtcNow() => new DateTimeOffset(2026, 11, 26, 12, 0, 0, TimeSpan.Zero).AddMinutes(minutes);
}
