namespace Loadmark.Meters.Instruments;

/// <summary>An instrument did not answer, or not as it should; the message is for people.</summary>
public sealed class InstrumentException : Exception
{
    /// <summary>With no message.</summary>
    public InstrumentException()
    {
    }

    /// <summary>With a message.</summary>
    public InstrumentException(string message)
        : base(message)
    {
    }

    /// <summary>With a message, and what is behind it.</summary>
    public InstrumentException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
