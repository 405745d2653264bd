namespace Loadmark.Storage.Faults;

/// <summary>The medium failed during a call: what was asked is not done, and what was kept before is kept still.</summary>
#pragma warning disable RCS1194 // Only the store makes one, and always with its kind.
public sealed class StorageException : Exception
#pragma warning restore RCS1194
{
    internal StorageException(StoreFault fault, string message, Exception? cause = null)
        : base(message, cause) => Fault = fault;

    /// <summary>The kind of the failure. <see cref="Exception.Message"/> tells it to the user, and what to do.</summary>
    public StoreFault Fault { get; }
}
