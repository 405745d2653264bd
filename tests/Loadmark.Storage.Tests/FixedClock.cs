namespace Loadmark.Storage.Tests;

/// <summary>A clock that stands still.</summary>
internal sealed class FixedClock(DateTimeOffset now) : TimeProvider
{
    public override DateTimeOffset GetUtcNow() => now;
}
