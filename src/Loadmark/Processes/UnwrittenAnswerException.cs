namespace Loadmark.Processes;

/// <summary>Standard output did not take the answer.</summary>
/// <param name="message">Why.</param>
/// <param name="cause">What the system said.</param>
#pragma warning disable RCS1194 // Only standard output makes one, and always with its reason.
internal sealed class UnwrittenAnswerException(string message, Exception cause) : IOException(message, cause);
#pragma warning restore RCS1194
