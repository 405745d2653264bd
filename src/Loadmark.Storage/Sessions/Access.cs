using System.Data;
using Loadmark.Storage.Copies;
using Loadmark.Storage.Entities;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Loadmark.Storage.Sessions;

/// <summary>Opens the file, and runs what reads or writes it; a failure of the medium becomes a <see cref="StorageException"/>.</summary>
internal sealed class Access(DatabaseFile file, TimeProvider clock) : IDisposable
{
    /// <summary>Changes wait here for each other rather than in the database, which would look again every few milliseconds.</summary>
    private readonly SemaphoreSlim _turn = new(1);

    private volatile bool _isOpen;
    private volatile bool _hasChanged;

    /// <summary>Why the last opening failed; null when it did not.</summary>
    private volatile StorageException? _fault;

    /// <summary>Whether the last opening went well.</summary>
    public bool IsOpen => _isOpen;

    /// <summary>Whether a change was committed.</summary>
    public bool HasChanged => _hasChanged;

    public async Task<StoreOpening> OpenAsync(CancellationToken cancellationToken)
    {
        await _turn.WaitAsync(cancellationToken);
        try
        {
            var opening = await Task.Run(() => new Opening(file, clock).Run(), cancellationToken);
            (_isOpen, _fault, file.IsOpenHere) = (true, null, true);
            return opening;
        }
        catch (StorageException fault)
        {
            (_isOpen, _fault) = (false, fault);
            Close();
            return new StoreOpening { Fault = fault.Fault, Trouble = fault.Message };
        }
        finally
        {
            _turn.Release();
        }
    }

    public async Task<T> ReadAsync<T>(Func<StorageContext, Task<T>> read, CancellationToken cancellationToken)
    {
        CheckOpen(MediumFaults.WhileReading);
        try
        {
            // SQLite waits without giving its thread back.
            return await Task.Run(
                async () =>
                {
                    file.CheckIsThere();
                    await using var context = file.NewContext();
                    return await read(context);
                },
                cancellationToken);
        }
        catch (Exception fault) when (MediumFaults.KindOf(fault) is { } kind)
        {
            throw MediumFaults.WhileReading(kind, fault);
        }
    }

    public async Task<T> WriteAsync<T>(Func<StorageContext, Task<T>> write, CancellationToken cancellationToken)
    {
        CheckOpen(MediumFaults.WhileChanging);
        await _turn.WaitAsync(cancellationToken);
        try
        {
            return await Task.Run(
                async () =>
                {
                    file.CheckIsThere();
                    await using var context = file.NewContext();

                    // Serializable takes the database's one turn to write at once, so that what is read next is what is changed.
                    await using var transaction =
                        await context.Database.BeginTransactionAsync(IsolationLevel.Serializable, cancellationToken);
                    var answer = await write(context);
                    await transaction.CommitAsync(cancellationToken);
                    _hasChanged = true;
                    return answer;
                },
                cancellationToken);
        }
        catch (Exception fault) when (MediumFaults.KindOf(fault) is { } kind)
        {
            throw MediumFaults.WhileChanging(kind, fault);
        }
        finally
        {
            _turn.Release();
        }
    }

    public void Dispose()
    {
        Close();
        _turn.Dispose();
    }

    private void Close()
    {
        file.Close();
        file.IsOpenHere = false;
    }

    private void CheckOpen(Func<StoreFault, Exception, StorageException> words)
    {
        if (_fault is { } fault)
            throw words(fault.Fault, fault);
        if (!_isOpen)
            throw new InvalidOperationException("The store is used before it is opened.");
    }
}
