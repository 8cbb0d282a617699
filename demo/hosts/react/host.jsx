import 'acre-to-axle/define';
import { StrictMode, useState } from 'react';
import { createRoot } from 'react-dom/client';

function Host({ catalogue }) {
  const [fitting, setFitting] = useState([]);
  return (
    <>
      <h1>Which tractor fits your work?</h1>
      <acre-to-axle catalogue={catalogue} units="us" onacre-result-shown={({ detail }) => setFitting(detail.machines)}>
        <p>Call us: we ask the same questions.</p>
      </acre-to-axle>
      <output>{fitting.length > 0 && `${fitting.length} machines fit`}</output>
    </>
  );
}

const catalogue = await (await fetch('/catalogue.json')).json();
createRoot(document.querySelector('#host')).render(<StrictMode><Host catalogue={catalogue} /></StrictMode>);
